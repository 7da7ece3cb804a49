#pragma once

#include <string>

#include "app/command_line/call.h"
#include "app/command_line/opened_garment.h"
#include "core/store/drawing_check.h"

namespace coutil {

// Reads the drawing of --drawing and compares it with what the program draws of the garment now: a
// pattern, tracings or, where no sewing line is in it, cutting lines at --kerf. Problems, without a
// value: those of readWholeFile(), readDrawingSvg() and readCutterChoices(); of the draft when
// there is nothing to compare with.
[[nodiscard]] Outcome<DrawingCheck> checkDrawingBack(const Call& call, const Pattern& pattern,
                                                     const std::vector<Tracing>& tracings);

}  // namespace coutil
