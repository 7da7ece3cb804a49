#pragma once

#include <QByteArray>
#include <vector>

#include "ui/printing/pdf_file.h"

namespace coutil {

// The pages as PDF made by Qt: drawn exactly, but with page boxes in whole points, the time of day
// in it and no word on scaling. Empty when progress stopped it.
[[nodiscard]] QByteArray paintedPdf(const std::vector<SheetDrawing>& drawings,
                                    const PdfProgress& progress);

// The same file with exact page boxes (content anchored at the paper's upper left corner),
// PrintScaling None, the given title and date and nothing else about its making. Empty if the bytes
// could not be read back as PDF.
[[nodiscard]] QByteArray finishedPdf(const QByteArray& painted,
                                     const std::vector<SheetDrawing>& drawings,
                                     const PdfInfo& info);

}  // namespace coutil
