#pragma once

#include "core/geometry/cubic.h"

namespace coutil {

// Length in mm of the part of a piece between two parameters, t0 <= t1; error as lengthMm(Cubic).
[[nodiscard]] double partLengthMm(const Cubic& c, double t0, double t1);

// The parameter at a length from the start of the piece, whose whole length is totalMm; clamped to
// 0..1. Error below 1e-9 mm along the piece.
[[nodiscard]] double parameterAtLength(const Cubic& c, double fromStartMm, double totalMm);

}  // namespace coutil
