#pragma once

#include <vector>

#include "core/block/style.h"
#include "core/measurements/body.h"
#include "core/problems/problem.h"

namespace coutil {

// One level of a block with a target, mm. The half width is what the panels of one half come to:
// (target - lacing gap) / 2.
struct LevelRow {
    LevelId id{};
    double heightMm = 0;
    double bodyMm = 0;
    double targetMm = 0;
    double gapMm = 0;

    [[nodiscard]] double halfWidthMm() const { return (targetMm - gapMm) / 2; }
};

// The levels of a body in a style, from the lowest to the highest. Bust, under-bust, waist and one
// level below are always there; the level above the bust is left out where the armpit lies too
// close over the bust for a level of its own. Problems: measurementMissing, levelOrderWrong
// (subject = the level that lies on or over the next one), panelTooNarrow where nothing is left of
// a level beside the lacing gap.
[[nodiscard]] Outcome<std::vector<LevelRow>> levelTable(const Body& body, const Style& style);

// Ease and lacing gap of a level by the style.
[[nodiscard]] double easeMm(const Style& style, LevelId level);
[[nodiscard]] double lacingGapMm(const Style& style, LevelId level);

}  // namespace coutil
