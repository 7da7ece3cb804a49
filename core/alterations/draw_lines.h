#pragma once

#include "core/pattern/pattern.h"

namespace coutil {

// Draws top and bottom lines again through corners that have moved. `before` holds the pattern with
// the same panels, edges and seams from which the long edges of `pattern` were made; the lines of
// `pattern` are those to draw again (usually still those of `before`).
//
// Each line is carried along with its two corners (turned and stretched with its chord). At a seam
// its angle against the seam changes by as much as the block's own rule (lineAngleAtSeamRad)
// changes between the old and the new corners, in both panels alike, so that one smooth line stays
// one. At centre front and back a square line stays square, a pointed one changes as the block's
// pointed line would. A line whose corners, seam directions and angles are what they were stays the
// same, bit for bit.
void drawLinesAgain(const Pattern& before, Pattern& pattern);

// Turns the ends of the top and bottom lines at every seam by equal parts, so that both angles sum
// to 180 degrees; lines that do so within rounding stay as they are.
void evenLinesAcrossSeams(Pattern& pattern);

}  // namespace coutil
