#pragma once

#include <vector>

#include "core/geometry/path.h"

namespace coutil {

// What one panel gives to a top or bottom line: its two corners and the upward directions (unit
// length) of its seams there, in the panel's own frame.
struct PanelCorners {
    Point front = Point::Zero();
    Point back = Point::Zero();
    Vector frontUp = Vector::UnitY();
    Vector backUp = Vector::UnitY();
};

// How the line meets centre front and centre back.
enum class LineMeeting {
    square,  // at 90 degrees
    pointed  // as it comes
};

// The angle of the line against the seam's upward direction between two neighbours, radians,
// counter-clockwise positive: one number for both panels. How it is taken: see edgeCurves().
[[nodiscard]] double lineAngleAtSeamRad(const PanelCorners& before, const PanelCorners& after);

// The top or bottom line, one path per panel from its front corner to its back corner. At every
// seam one angle against the seam's own direction is taken from the chords of both neighbours,
// weighted so that a circle through the three corners would be followed, and used in both panels:
// the two angles sum to 180 degrees by construction. Where the line turns from rising to falling at
// a seam it is level there, so that a peak lies on its seam and nothing overshoots.
[[nodiscard]] std::vector<Path> edgeCurves(const std::vector<PanelCorners>& panels,
                                           LineMeeting front, LineMeeting back);

}  // namespace coutil
