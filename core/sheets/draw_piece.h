#pragma once

#include <vector>

#include "core/sheets/sheet_drawing.h"

namespace coutil {

// Lines and words of one placed tracing, on the drawing (mm, not yet corrected).
struct PieceDrawing {
    std::vector<SheetStroke> strokes;
    std::vector<SheetLettering> letterings;
};

// Cutting and sewing lines, grain line with arrows, notches, levels with their names, big pale
// number and label. The label lies level where the room allows, on one sheet and off the level
// lines where it can.
[[nodiscard]] PieceDrawing drawPiece(const SheetPlan& plan, const PlacedTracing& piece,
                                     const Tracing& tracing, const SheetWords& words);

}  // namespace coutil
