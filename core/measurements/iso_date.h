#pragma once

#include <string_view>

namespace coutil {

// True for a day of the calendar written as ISO 8601 has it: "2026-03-02".
[[nodiscard]] bool isIsoDate(std::string_view text);

}  // namespace coutil
