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
    // Middles of what stands on either side: the join's number and the neighbour's name.
    struct Words {
        Point number = Point::Zero();
        Point name = Point::Zero();
    };
    Words onFirst;
    Words onSecond;
};

// All joins, numbered from 1 row by row. Marks and names keep off the lines and words given; where
// there is no such place along the join, they lie on as few as may be.
[[nodiscard]] std::vector<Join> joinsOf(const SheetPlan& plan,
                                        const std::vector<SheetStroke>& lines,
                                        const std::vector<SheetLettering>& words);

// What one sheet shows of its joins, on the drawing: cut or lay-on line, crosses at its ends, half
// a diamond with the join's number, the neighbour's name. Nothing reaches outside the sheet's frame
// (crosses are clipped to it).
void drawJoin(const Join& join, const Sheet& sheet, std::vector<SheetStroke>& strokes,
              std::vector<SheetLettering>& letterings);

}  // namespace coutil
