#pragma once

#include <vector>

#include "core/sheets/sheet_drawing.h"
#include "core/sheets/sheet_plan.h"
#include "core/units/length.h"
#include "ui/canvas/table_scene.h"

namespace coutil {

// The big drawing with the grid of sheets and their names: where each tracing lies, which sheets
// are printed.
[[nodiscard]] TableScene sheetPlanScene(const SheetPlan& plan, const std::vector<Tracing>& tracings,
                                        LengthUnit unit);

// One page, large, as it will be printed.
[[nodiscard]] TableScene sheetPageScene(const SheetDrawing& page, LengthUnit unit);

}  // namespace coutil
