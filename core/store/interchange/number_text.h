#pragma once

#include <string>

namespace coutil::interchange {

// A number with at most `decimals` decimals and a point, trailing zeros dropped, never "-0";
// whatever the locale.
[[nodiscard]] std::string numberText(double value, int decimals);

}  // namespace coutil::interchange
