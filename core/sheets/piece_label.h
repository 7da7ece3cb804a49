#pragma once

#include <vector>

#include "core/sheets/sheet_drawing.h"

namespace coutil {

// Number and label lines of one placed tracing, on the drawing in mm, inside its label room. Level
// where the room allows, else along the piece; where it can on a single sheet and clear of `lines`.
[[nodiscard]] std::vector<SheetLettering> labelOf(const SheetPlan& plan, const PlacedTracing& piece,
                                                  const Tracing& tracing, const SheetWords& words,
                                                  const std::vector<SheetStroke>& lines);

}  // namespace coutil
