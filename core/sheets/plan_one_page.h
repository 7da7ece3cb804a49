#pragma once

#include <vector>

#include "core/sheets/sheet_plan.h"

namespace coutil {

// Everything on one page, with the test square and words beside it: the quick layout over pages of
// several widths, the one with the least area, ends on whole centimetres. Options must be sound.
// Problems: tooManySheets when no page up to kLongestPageUm holds it all.
[[nodiscard]] Outcome<SheetPlan> planOnePage(const std::vector<Tracing>& tracings,
                                             const SheetOptions& options);

}  // namespace coutil
