#pragma once

#include "core/geometry/cubic.h"

namespace coutil {

// A proven upper bound, mm, of the distance between the part t0..t1 of a piece and its chord; at
// most a few percent too large for gentle parts. start and end are the points at t0 and t1.
//
// A part of parameter width h leaves its chord, both run through at even speed, by at most
// h^2 / 8 max |z''|, and z'' of a cubic is linear: its largest value is at an end. Where the part
// moves along its chord without turning back, only the share of z'' across the chord counts.
[[nodiscard]] double chordErrorBoundMm(const Cubic& c, double t0, double t1, const Point& start,
                                       const Point& end);

}  // namespace coutil
