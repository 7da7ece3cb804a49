#pragma once

#include <QDate>
#include <QString>

#include "ui/printing/compare_pages.h"
#include "ui/printing/pdf_file.h"

namespace coutil {

// The paper of a comparison in the folio's unit, made on a day (invalid: no date on it), with the
// alterations between. For window and command line.
[[nodiscard]] ComparePaper comparePaper(const Folio& folio, const ComparedStates& states,
                                        const QDate& madeOn, double factor = 1);

// Writes the pages as writeSheetsPdf() does, with its problems.
[[nodiscard]] Outcome<PdfEnd> writeComparePdf(const ComparedStates& states,
                                              const ComparePaper& paper, const QDate& madeOn,
                                              const QString& path);

}  // namespace coutil
