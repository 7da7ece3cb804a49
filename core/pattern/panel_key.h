#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "core/pattern/pattern.h"

namespace coutil {

// What names one panel of a pattern: "2" on a half, "2 left" or "2 right" on a whole one.
[[nodiscard]] std::string panelKey(std::string_view name, PanelSide side);
[[nodiscard]] std::string panelKey(const Panel& panel);

// The index of the panel with a key; nothing where there is none.
[[nodiscard]] std::optional<std::size_t> panelWithKey(const Pattern& pattern, std::string_view key);

}  // namespace coutil
