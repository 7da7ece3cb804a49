#pragma once

#include <optional>

#include "core/alterations/amount_curve.h"
#include "core/alterations/upward_edge.h"

namespace coutil {

// The path of an edge moved along its own normal into its panel (or out of it) by a shift that
// depends on the seam position. Every piece that moves is cut so that no part is longer than
// kLongestMovedMm, at the knots of the shift, and where it is needed to stay within
// tolerance::kMovedEdgeMm of the true moved curve (0.005 mm everywhere, tested). Each part has the
// exact moved end points and the exact moved tangents, so parts join without a kink. Pieces the
// shift does not reach are the same, bit for bit. Moved neighbours that are one cubic within
// tolerance::kMergedPieceMm are joined again, up to twice kLongestMovedMm, so that many alterations
// do not pile up pieces.
//
// Nothing where the edge would fold: a hollow moved inwards further than its own radius.
[[nodiscard]] std::optional<Path> movedAlongNormal(const UpwardEdge& edge, const EdgeShift& shift);
inline constexpr double kLongestMovedMm = 12;

}  // namespace coutil
