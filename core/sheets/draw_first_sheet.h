#pragma once

#include "core/sheets/sheet_drawing.h"

namespace coutil {

// The page to print before all others: title, a 100 mm square with 4 in bars along two sides and,
// in it, the words on measuring it; sheet map; estimates and cautions.
[[nodiscard]] SheetDrawing drawFirstSheet(const SheetPlan& plan,
                                          const std::vector<Tracing>& tracings,
                                          const SheetWords& words);

// The same inside a box of the paper of a sheet that shows the pattern too, framed.
void drawFirstBlock(const SheetPlan& plan, const std::vector<Tracing>& tracings,
                    const SheetWords& words, const Box& box, SheetDrawing& drawing);

}  // namespace coutil
