#pragma once

#include "core/making_up/layer_cut.h"

namespace coutil {

// How much cloth a layer takes: an estimate for buying, not a lay.
struct ClothEstimate {
    double areaMm2 = 0;   // of all pieces: panel and allowances, corners left out (a few percent)
    double lengthMm = 0;  // of cloth, pieces upright side by side in rows on its width
    double clothWidthMm = 0;
    int pieces = 0;

    bool operator==(const ClothEstimate&) const = default;
};

// Every piece takes the upright rectangle round it with its allowances (a panel cut on the fold:
// both halves); tallest first, each into the first row with room. True lays, with pieces nested,
// are shorter. Problem: makingUpOutOfRange ("materials/cloth_width", lowest: the widest piece).
[[nodiscard]] Outcome<ClothEstimate> clothEstimate(const Pattern& pattern, const LayerCut& cut,
                                                   double clothWidthMm);

}  // namespace coutil
