#pragma once

#include <optional>

#include "core/alterations/alteration.h"
#include "core/alterations/upward_edge.h"

namespace coutil {

// The edge made longer at its upper or lower end by so many mm (above 0), going on as it was
// bending there: along a circle of the curvature of its end, not sharper than 150 mm, for 40 mm,
// then straight. What was cut off a seam and is put back so is the same line again, to the third
// order of its length.
[[nodiscard]] UpwardEdge runOnCurve(const UpwardEdge& edge, EdgeLine end, double byMm);

// An edge longer (by above 0: runOnCurve) or shorter (cut) at one end; nothing where less than
// 10 mm would be left on that side of its waist mark.
[[nodiscard]] std::optional<UpwardEdge> endMoved(const UpwardEdge& edge, EdgeLine end, double byMm);

}  // namespace coutil
