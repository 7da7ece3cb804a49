#pragma once

#include <optional>
#include <string>

#include "core/pattern/pattern.h"

namespace coutil {

// A panel that can't be cut out any more.
struct BrokenPanel {
    std::string key;  // panelKey()
    std::optional<Point> at{};
};

// The first panel of `after` whose outline is open, crosses itself or is gone, where it did not so
// in `before`. Panels that are the same in both are not looked at again.
[[nodiscard]] std::optional<BrokenPanel> newlyBroken(const Pattern& before, const Pattern& after);

}  // namespace coutil
