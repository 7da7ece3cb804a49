#pragma once

#include <vector>

#include "core/pattern/pattern.h"

namespace coutil {

// The checks that are always on, from the pattern alone: the promises (checkPattern), and what a
// maker should know of a fitted pattern. Errors are only what cannot be sewn.
[[nodiscard]] std::vector<Problem> everyCheck(const Pattern& pattern);

// Adds them to the problems of the stages before. A caution about the reduction that the block gave
// is taken out first: alterations may have changed the waist since.
void addEveryCheck(const Pattern& pattern, std::vector<Problem>& problems);

// Warning kinkInCurve for each edge whose direction jumps between two of its pieces by more than
// tolerance::kKinkDeg: the sharpest place (subject = edge; figures "value", "limit").
[[nodiscard]] std::vector<Problem> checkKinks(const Pattern& pattern);

// Note seamTooCurved for each seam whose allowance cannot be its channel: some 100 mm of the seam
// leave their chord by 3 mm and more, and bend to a radius of 250 mm or less there (common
// practice, no source). The worst place of both edges (subject = seam; figures "value", "limit",
// "radius", "position" = seam position). Error of the chord error below 0.02 mm.
[[nodiscard]] std::vector<Problem> checkChannels(const Pattern& pattern);

// Note girthOffTarget for each level whose girth is not what the style asks for (subject = level;
// figures "value", "target", "difference", and "body" where there is one). After a fitting it is
// so on purpose.
[[nodiscard]] std::vector<Problem> checkGirths(const Pattern& pattern);

// Warning reductionLarge where the waist is laced in by more than a tenth of the body (common
// practice, no source; figures "value", "percent", "limit").
[[nodiscard]] std::vector<Problem> checkReduction(const Pattern& pattern);

// Note sidesDiffer where left and right are not the same: the largest distance of an edge from its
// like on the other side (subject = edge, panel and place on the left; figure "value"); a panel
// that only one side has (subject = its name, no figures).
[[nodiscard]] std::vector<Problem> checkSides(const Pattern& pattern);

}  // namespace coutil
