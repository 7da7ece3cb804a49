#pragma once

#include <vector>

#include "core/sheets/outline_shape.h"
#include "core/sheets/sheet_plan.h"

namespace coutil {

// Finds the first page a place of about an A4 page on a sheet of the pattern, clear of tracings and
// of what neighbours share. Only on paper large enough that a sheet of its own for it would be a
// waste; small papers keep the first page apart, to be printed and measured before the rest. On a
// roll that is still to be cut, the place that needs least length.
void placeFirstBlock(const std::vector<OutlineShape>& shapes, SheetPlan& plan);

}  // namespace coutil
