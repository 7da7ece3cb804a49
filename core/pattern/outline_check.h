#pragma once

#include <optional>
#include <vector>

#include "core/geometry/point.h"
#include "core/pattern/pattern.h"

namespace coutil {

// Where a closed chain of points crosses or touches itself, neighbours apart; nothing if it is
// simple.
[[nodiscard]] std::optional<Point> selfCrossingOf(const std::vector<Point>& closedChain);

// Where the outline of a panel has a gap between two pieces or between end and start.
[[nodiscard]] std::optional<Point> gapOf(const Path& outline);

struct NarrowestWidth {
    double widthMm = 0;
    Point middle = Point::Zero();
};

// The narrowest place between the front and the back edge of a panel over the heights that both
// reach; nothing where they share no height. Error below 2 * tolerance::kCheckFlatnessMm.
[[nodiscard]] std::optional<NarrowestWidth> narrowestWidthOf(const Panel& panel);

}  // namespace coutil
