#pragma once

#include <vector>

#include "core/pattern/pattern.h"
#include "core/sheets/sheet_drawing.h"
#include "ui/papers/paper_head.h"

namespace coutil {

// One place to read: a seam where a level crosses it, or its end.
struct ReadingPlace {
    std::string seam;       // "1-2"
    std::string level;      // key; "top" and "bottom": the seam's ends
    double positionMm = 0;  // seam position: where the client finds it from the waist tape
};
// Every seam at its ends and at every level that crosses it, front to back, each from above; a seam
// that a whole pattern has twice stands there once.
[[nodiscard]] std::vector<ReadingPlace> readingPlaces(const Pattern& pattern);

// The sheet that goes out with a mock-up: how to try it on, pin and cut safely, the panels small
// with their seams numbered, and a table to write pinned and opened amounts in, left and right.
// `returnBy` (may be invalid) is printed as the day it should be back.
[[nodiscard]] std::vector<SheetDrawing> fittingPaper(const Pattern& pattern, const PaperHead& head,
                                                     const QDate& returnBy);

}  // namespace coutil
