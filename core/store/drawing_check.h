#pragma once

#include <string>
#include <vector>

#include "core/problems/problem.h"
#include "core/store/drawing_svg.h"

namespace coutil {

// How one panel of a drawing that came back lies on what the program would draw.
struct DrawnPanelCheck {
    std::string panel;
    double largestMm = 0;  // of its sewing and cutting lines, after laying it over
    double scale = 1;      // size over true size
};

struct DrawingCheck {
    std::vector<DrawnPanelCheck> panels;  // in the order of what was expected
    std::vector<Problem> problems;
};

// Compares a drawing that came back with the one the program would write now. Each panel is laid
// over its own by shifting and turning (least squares over places of like-named lines; left where
// it is if that is nearer), since cutters move pieces; never by stretching. The largest distance is
// that from any place of either's sewing and cutting lines to the other's nearest (stations every 2
// mm). Problems: drawingPanelOff (warning, over tolerance::kDrawingMm; "value", "limit"; where),
// drawingScaled (warning; "percent"; takes the place of the former), drawingPanelMissing,
// drawingPanelUnknown (warnings).
[[nodiscard]] DrawingCheck checkDrawing(const Drawing& found, const Drawing& expected);

}  // namespace coutil
