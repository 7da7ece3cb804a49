#pragma once

#include <QByteArray>
#include <vector>

#include "ui/printing/pdf_file.h"
#include "ui/printing/pdf_parts.h"

namespace coutil {

// A page as it goes into the file.
struct PdfPage {
    double widthMm = 0;
    double heightMm = 0;
    std::vector<PdfPart> parts;
};

[[nodiscard]] std::vector<PdfPage> pdfPages(const std::vector<SheetDrawing>& drawings);

// Every part of every page as a page of its own, made by Qt: drawn exactly, but with page boxes in
// whole points, the time of day in it and no word on scaling. Empty when progress, which counts the
// pages, stopped it.
[[nodiscard]] QByteArray paintedPdf(const std::vector<PdfPage>& pages, const PdfProgress& progress);

// The same file with the parts of each page put over each other again, each in the optional-content
// layer of its kind (ISO 32000-1, 8.11), all of them shown; exact page boxes (content anchored at
// the paper's upper left corner; a page over 14,400 points counts in a larger unit, UserUnit),
// PrintScaling None, the given title and date and nothing else about its making. Empty if the bytes
// could not be read back as PDF.
[[nodiscard]] QByteArray finishedPdf(const QByteArray& painted, const std::vector<PdfPage>& pages,
                                     const PdfInfo& info);

}  // namespace coutil
