#pragma once

#include "core/geometry/cubic.h"

namespace coutil {

// The smallest rectangle around the control points; holds the piece, seldom tightly.
[[nodiscard]] Box controlBoxOf(const Cubic& c);

// The parameter of the place on the piece nearest to a point; the smallest one if several are
// equally near. Error below 1e-6 mm.
[[nodiscard]] double closestParameter(const Cubic& c, const Point& point);

}  // namespace coutil
