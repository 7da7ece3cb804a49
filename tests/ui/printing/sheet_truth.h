#pragma once

#include <QString>
#include <vector>

#include "core/sheets/sheet_drawing.h"

namespace coutil {

// What a reader of the PDF should find, as JSON for read_back.py: page size, where each sheet lies,
// its kept neighbours, factors, and the tracings' outlines as placed, as chains of points within
// 0.001 mm.
[[nodiscard]] bool writeTruth(const SheetPlan& plan, const std::vector<Tracing>& tracings,
                              const QString& title, const QString& path);

// English words enough for a test.
[[nodiscard]] SheetWords testWords();

}  // namespace coutil
