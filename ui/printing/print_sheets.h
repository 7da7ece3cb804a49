#pragma once

#include <QPrinter>
#include <QString>
#include <vector>

#include "core/sheets/sheet_drawing.h"
#include "ui/printing/pdf_file.h"

namespace coutil {

// Sets the printer to the drawings' paper: full page, no margins of its own, and asks the print
// system not to scale. Call it before the print dialog and again after, since a dialog may change
// the paper.
void setUpPrinter(QPrinter& printer, const std::vector<SheetDrawing>& drawings);

// Widest margin in mm, on any side, in which this printer cannot print on the paper it is set to; a
// plan with a narrower margin would lose its edges.
[[nodiscard]] double unprintableMarginMm(const QPrinter& printer);

// Prints pages first..last (from 0) true to scale on a printer already chosen; sets it up itself.
// `stopped` also when progress stopped it between two pages. Problems: fileUnwritable (subject =
// the printer's name) when the printer takes no job.
[[nodiscard]] Outcome<PdfEnd> printSheets(QPrinter& printer,
                                          const std::vector<SheetDrawing>& drawings,
                                          std::size_t first, std::size_t last,
                                          const PdfProgress& progress = {});

}  // namespace coutil
