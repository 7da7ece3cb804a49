#pragma once

#include <QSettings>

#include "core/sheets/sheet_plan.h"

namespace coutil {

// How this maker prints: belongs to her printer, not to any folio. The correction factors are kept
// for each paper.
[[nodiscard]] SheetOptions storedSheetOptions(const QSettings& settings);
void storeSheetOptions(QSettings& settings, const SheetOptions& options);

// The factors stored for a paper, 1 where none were.
[[nodiscard]] Correction storedCorrection(const QSettings& settings, const Paper& paper);

// The factor after a square meant to be 100 mm was measured: builds on the factor it was printed
// with.
[[nodiscard]] double correctedFactor(double factorInForce, double measuredMm);

[[nodiscard]] bool storedPrintsClient(
    const QSettings& settings);  // the client's name on the sheets
void storePrintsClient(QSettings& settings, bool printsClient);

}  // namespace coutil
