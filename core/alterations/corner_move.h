#pragma once

#include "core/alterations/alteration.h"
#include "core/pattern/pattern.h"

namespace coutil {

// A move of the end of a long edge: along the edge, away from the waist, and across it, into the
// panel; mm.
struct CornerMove {
    double outMm = 0;
    double inwardMm = 0;
};
[[nodiscard]] CornerMove cornerMoveOf(const Edge& edge, EdgeLine end, const Vector& byMm);
[[nodiscard]] Vector vectorOf(const Edge& edge, EdgeLine end, const CornerMove& move);

}  // namespace coutil
