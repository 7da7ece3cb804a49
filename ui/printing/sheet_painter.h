#pragma once

#include <QPainter>

#include "core/sheets/sheet_drawing.h"

namespace coutil {

// Paints one page. The painter must be set so that 1 unit is 1 mm with the origin at the upper left
// corner of the PAPER and y down; any device will do (PDF, printer, screen). Nothing is painted
// inside the margin. Colours are fixed: paper is white in every theme. The painter's state is
// restored.
void paintSheet(QPainter& painter, const SheetDrawing& drawing);

}  // namespace coutil
