#pragma once

#include <optional>
#include <vector>

#include "core/alterations/alteration.h"
#include "core/pattern/pattern.h"

namespace coutil {

// One ShapeSeam that is tried before all others: its seam and split are used, not its amounts.
struct SeamToShape {
    BodySide side = BodySide::both;
    ShapeSeam like;
};

// Alterations after which the outlines of `changed` are those of `wanted` (the same panels and
// edges) within tolerance::kTakenBackMm: those in `first`, then, only as far as outlines are still
// off, one ShapeSeam for each edge and one ReshapeEdge for each line. Nothing where that does not
// come so near. What it gives is proven by applying it.
[[nodiscard]] std::optional<std::vector<Alteration>> restoring(
    const Pattern& changed, const Pattern& wanted, const std::vector<Alteration>& first,
    const std::optional<SeamToShape>& seamFirst);

}  // namespace coutil
