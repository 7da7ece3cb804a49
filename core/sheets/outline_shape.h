#pragma once

#include <vector>

#include "core/geometry/cubic.h"
#include "core/geometry/path.h"
#include "core/tracing/tracing.h"

namespace coutil {

// The region inside a closed chain of points, mm. The last point is joined to the first.
struct OutlineShape {
    std::vector<Point> points;
    Box box;
};

[[nodiscard]] OutlineShape shapeOf(std::vector<Point> points);

// The cutting line of a tracing where it is placed, as a polygon within toleranceMm of it.
[[nodiscard]] OutlineShape shapeOf(const Tracing& tracing, const Placement& placement,
                                   double toleranceMm);

// Whether any point of the straight line from a to b lies in the box.
[[nodiscard]] bool segmentMeets(const Point& a, const Point& b, const Box& box);

[[nodiscard]] bool boxesMeet(const Box& a, const Box& b);

// Whether any point of the region lies in the box.
[[nodiscard]] bool meets(const OutlineShape& shape, const Box& box);

// Whether the point lies inside (even-odd); points on the outline may fall either way.
[[nodiscard]] bool isInside(const OutlineShape& shape, const Point& point);

// Least distance of two regions, mm; 0 where they overlap. Anything beyond capMm returns capMm.
[[nodiscard]] double distanceMm(const OutlineShape& a, const OutlineShape& b, double capMm);

}  // namespace coutil
