#pragma once

#include <cstddef>

#include "core/block/style.h"
#include "core/measurements/body.h"
#include "core/pattern/pattern.h"
#include "core/problems/problem.h"

namespace coutil {

// Drafts the corset block: a pure function of body and style. See the rules in DEVELOPERS.md ("The
// corset block"). Returns the pattern, with warnings where a maker should know something
// (reductionLarge), or errors that name level, panel and figure when body and style cannot both be
// served.
[[nodiscard]] Outcome<Pattern> draftCorset(const Body& body, const Style& style);

// Values of a style against their limits; empty when all are sound. Called by draftCorset.
[[nodiscard]] std::vector<Problem> checkStyle(const Style& style);

// What a style leaves open, filled in for one body: shown as the grey figures in the style's
// fields.
struct ResolvedHeights {
    std::vector<double>
        topMm;  // centre front, each seam front to back, centre back; up from the waist mark
    std::vector<double> bottomMm;  // the same, down from the waist mark
    std::size_t sideSeam = 0;      // which seam is nearest the side, 0 between panels 1 and 2
};
[[nodiscard]] ResolvedHeights resolvedHeights(const Body& body, const Style& style);

// The shares in force: style's own where given, else the defaults of the panel count (front to
// back, sum 1).
[[nodiscard]] std::vector<double> seamSharesInForce(const Style& style, LevelId level);

}  // namespace coutil
