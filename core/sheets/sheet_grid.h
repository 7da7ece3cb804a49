#pragma once

#include <vector>

#include "core/sheets/outline_shape.h"
#include "core/sheets/sheet_plan.h"

namespace coutil {

// A plan with its grid worked out and nothing on it yet. Options must be sound.
[[nodiscard]] SheetPlan emptyPlan(const SheetOptions& options, bool isLandscape);

// Sets rows, columns and sheets of a plan from what lies on it: by the real outlines, grown by half
// a pen. Of the sheets that could show a stretch lying in an overlap the fewest are kept. The
// shapes must have no point left of or below 0.
void keepSheetsUnder(const std::vector<OutlineShape>& shapes, SheetPlan& plan);

// The outlines of everything on the plan, where it lies.
[[nodiscard]] std::vector<OutlineShape> shapesOn(const SheetPlan& plan,
                                                 const std::vector<Tracing>& tracings);

// How often a join between two sheets runs through a piece: sheets a piece needs, less one, summed.
[[nodiscard]] int joinsThroughPieces(const SheetPlan& plan,
                                     const std::vector<OutlineShape>& shapes);

}  // namespace coutil
