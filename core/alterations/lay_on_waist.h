#pragma once

#include <optional>

#include "core/pattern/pattern.h"

namespace coutil {

// The placement that turns by an angle (radians, counter-clockwise) about a point.
[[nodiscard]] Placement turnAbout(const Point& centre, double rad);

// The waist mark of a long edge; nothing where it has none.
[[nodiscard]] std::optional<Point> waistMarkOf(const Edge& edge);

// The placement that lays a panel whose parts were turned back on its waist: both waist marks on
// y = 0, the front one at its x. Nothing where a long edge has no waist mark.
[[nodiscard]] std::optional<Placement> layingOnWaist(const Edge& front, const Edge& back);

}  // namespace coutil
