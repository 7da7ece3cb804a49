#include <algorithm>
#include <numeric>

#include "ui/printing/open_pdf.h"

namespace coutil {

std::vector<PdfPage> pdfPages(const std::vector<SheetDrawing>& drawings) {
    std::vector<PdfPage> pages;
    pages.reserve(drawings.size());
    for (const SheetDrawing& drawing : drawings) {
        pages.push_back({drawing.widthMm, drawing.heightMm, partsOf(drawing)});
    }
    return pages;
}

QByteArray finishedPdf(const QByteArray& painted, const std::vector<PdfPage>& pages,
                       const PdfInfo& info) {
    OpenPdf pdf(painted);
    const std::size_t parts = std::accumulate(
        pages.begin(), pages.end(), std::size_t{0},
        [](std::size_t sum, const PdfPage& page) { return sum + page.parts.size(); });
    if (!pdf.isSound() || pdf.pages() != parts) return {};
    pdf.joinParts(pages);
    for (std::size_t i = 0; i < pages.size(); ++i) {
        pdf.setExactBoxes(i, pages[i].widthMm, pages[i].heightMm);
    }
    pdf.askForTrueScale();
    pdf.setInfo(info);
    return pdf.written();
}

}  // namespace coutil
