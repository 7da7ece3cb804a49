#pragma once

#include <vector>

#include "core/measurements/measurement.h"
#include "core/sheets/sheet_drawing.h"
#include "ui/papers/paper_head.h"

namespace coutil {

// The measurements asked for by post: those without which no corset can be drafted, and those the
// block uses or estimates from others, in the order of measuring.
[[nodiscard]] std::vector<Measurement> measurementsToAskFor();

// The sheet a client measures by at home: for each measurement a figure with the tape, how to take
// it, and a line to write on, in the unit of the head.
[[nodiscard]] std::vector<SheetDrawing> measuringPaper(const PaperHead& head);

}  // namespace coutil
