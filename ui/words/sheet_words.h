#pragma once

#include <QString>
#include <vector>

#include "core/measurements/body.h"
#include "core/sheets/sheet_drawing.h"
#include "core/units/length.h"

namespace coutil {

// Every word on the printed sheets, in the user's language; lengths in `unit`. Tells the correction
// factors of the options where they are not 1, since a new measuring must build on them.
[[nodiscard]] SheetWords sheetWords(const TracingTitle& title,
                                    const std::vector<Estimate>& estimates,
                                    const SheetOptions& options, LengthUnit unit);

// "A4", "One big page": what people call a paper.
[[nodiscard]] QString paperName(const Paper& paper);

}  // namespace coutil
