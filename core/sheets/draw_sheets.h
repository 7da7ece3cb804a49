#pragma once

#include <functional>
#include <vector>

#include "core/sheets/draw_piece.h"
#include "core/sheets/sheet_drawing.h"

namespace coutil {

// What is drawn where a piece of the plan lies, on the drawing in mm.
using DrawnPiece = std::function<PieceDrawing(const PlacedTracing& piece)>;

// As drawSheets() of sheet_drawing.h, with another drawing of each piece; nothing of it lies
// outside the tracings' cutting lines.
[[nodiscard]] std::vector<SheetDrawing> drawSheets(const SheetPlan& plan,
                                                   const std::vector<Tracing>& tracings,
                                                   const SheetWords& words,
                                                   const DrawnPiece& drawnPiece);

}  // namespace coutil
