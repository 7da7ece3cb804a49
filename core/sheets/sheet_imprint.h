#pragma once

#include <string>
#include <vector>

#include "core/sheets/free_room.h"
#include "core/sheets/sheet_drawing.h"

namespace coutil {

// Writes a sheet's imprint, near the lower left: what it is (place) and what belongs to it (notes).
// Off pieces and lines where there is room, in one block or two, across or upright; else off
// lines, on the piece. Takes what it uses from the room.
void writeImprint(const std::string& place, const std::vector<std::string>& notes, const Box& frame,
                  FreeRoom& room, SheetDrawing& drawing);

// The sheet's name, pale and as large as the room lets it be, near the middle; off pieces rather
// than large, and never over lines where there is any room at all.
void writeLargeName(const std::string& name, const Box& frame, FreeRoom& room,
                    SheetDrawing& drawing);

}  // namespace coutil
