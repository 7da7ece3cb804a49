#pragma once

#include <optional>

#include "core/alterations/amount_curve.h"
#include "core/alterations/upward_edge.h"

namespace coutil {

// The path of an edge moved along its own normal into its panel (or out of it) by a shift that
// depends on the seam position. Every piece that moves is cut so that no part is longer than
// kLongestMovedMm and at the knots of the shift; each part has the exact moved end points and the
// exact moved tangents, so that between them it leaves the true moved curve by less than 0.02 mm
// (tested) and parts join without a kink. Pieces the shift does not reach are the same, bit for
// bit. Moved neighbours that are one cubic within kMergedMm are joined again, up to twice
// kLongestMovedMm, so that many alterations do not pile up pieces.
//
// Nothing where the edge would fold: a hollow moved inwards further than its own radius.
[[nodiscard]] std::optional<Path> movedAlongNormal(const UpwardEdge& edge, const EdgeShift& shift);
inline constexpr double kLongestMovedMm = 15;

}  // namespace coutil
