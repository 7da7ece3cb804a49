#pragma once

#include "core/pattern/pattern.h"

namespace coutil {

// The panel turned over in the y axis. Its edges keep their names and roles; their paths run
// counter-clockwise again, so what ran up runs down. The first edge stays first.
[[nodiscard]] std::vector<Edge> mirrored(const std::vector<Edge>& edges);
[[nodiscard]] Path mirrored(const Path& path);  // in the same direction of travel
[[nodiscard]] inline Point mirrored(const Point& point) { return {-point.x(), point.y()}; }

}  // namespace coutil
