#pragma once

#include "core/sheets/sheet_drawing.h"

namespace coutil {

// The sheet map as large as it fits into a box of the paper, from its upper left corner: every
// kept sheet with its name, every piece with its number.
void drawSheetMap(const SheetPlan& plan, const std::vector<Tracing>& tracings, const Box& room,
                  SheetDrawing& drawing);

}  // namespace coutil
