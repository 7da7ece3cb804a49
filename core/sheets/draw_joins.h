#pragma once

#include <vector>

#include "core/sheets/sheet_drawing.h"

namespace coutil {

// A join between two neighbouring sheets that are both kept: the line where the sheet to the right
// (or below), cut along its frame, is laid on the one to the left (or above), and a numbered mark
// of which each sheet carries one half. All on the drawing, mm.
struct Join {
    int number = 0;
    Sheet first;   // left or upper
    Sheet second;  // right or lower
    bool isUpright = false;
    Point from = Point::Zero();
    Point to = Point::Zero();
    Point mark = Point::Zero();  // centre of the mark, on the line
};

// All joins, numbered from 1 row by row. Marks keep off the lines given where they can.
[[nodiscard]] std::vector<Join> joinsOf(const SheetPlan& plan,
                                        const std::vector<SheetStroke>& lines);

// What one sheet shows of its joins, on the drawing: cut or lay-on line, crosses at its ends, half
// a diamond with the join's number, the neighbour's name. Nothing reaches outside the sheet's frame
// (crosses are clipped to it).
void drawJoin(const Join& join, const Sheet& sheet, std::vector<SheetStroke>& strokes,
              std::vector<SheetLettering>& letterings);

}  // namespace coutil
