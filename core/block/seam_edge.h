#pragma once

#include <vector>

#include "core/block/suppression_curve.h"
#include "core/geometry/path.h"

namespace coutil {

// One edge of a panel before it is trimmed: longer than needed, running upwards, with the seam
// position of each of its knots. Heights grow along it, evenly on every piece.
struct SeamEdge {
    Path path;
    std::vector<double> knotPositionMm;  // one more than pieces

    [[nodiscard]] double lowestPositionMm() const { return knotPositionMm.front(); }
    [[nodiscard]] double highestPositionMm() const { return knotPositionMm.back(); }
};

// The line x = baseMm + part * sigma(y), exactly, run on straight far beyond the curve's ends. The
// curve must have a knot at the waist.
[[nodiscard]] SeamEdge seamEdge(const SuppressionCurve& curve, double baseMm, double part);

// Seam position of the point at a height, and height, point, upward direction at a position (unit
// length). Clamped to the ends.
[[nodiscard]] double positionAtHeightMm(const SeamEdge& edge, double heightMm);
[[nodiscard]] PathPosition placeAt(const SeamEdge& edge, double positionMm);

// The part between two seam positions, running upwards.
[[nodiscard]] Path trimmed(const SeamEdge& edge, double fromPositionMm, double toPositionMm);

}  // namespace coutil
