#pragma once

#include "ui/papers/fitting_paper.h"

namespace coutil {

class PageWriter;

// The table to write in: a row for every reading place; columns pinned and opened, left and right.
// Goes on over further pages where it must, and leaves `reservedMm` free under its end if the first
// page can hold that. Returns where it ends.
double writeFittingTable(PageWriter& page, const Pattern& pattern, LengthUnit unit, double topMm,
                         double reservedMm);

// How wide the lacing stands open at every level.
double writeLacingGap(PageWriter& page, const Pattern& pattern, LengthUnit unit, double topMm);

}  // namespace coutil
