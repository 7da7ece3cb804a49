#include <QBuffer>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>

#include "ui/printing/pdf_pages.h"
#include "ui/printing/sheet_painter.h"

namespace coutil {
namespace {

constexpr int kResolution = 1200;
constexpr double kMmPerInch = 25.4;

// Full page, no margins: only so is the origin exact at the paper's corner.
QPageLayout layoutFor(const SheetDrawing& drawing) {
    const QPageSize size(QSizeF(drawing.widthMm, drawing.heightMm), QPageSize::Millimeter,
                         QString(), QPageSize::ExactMatch);
    QPageLayout layout(size, QPageLayout::Portrait, QMarginsF());
    layout.setMode(QPageLayout::FullPageMode);
    return layout;
}

void paintPart(QPainter& painter, const SheetDrawing& drawing) {
    painter.save();
    painter.resetTransform();
    // From the resolution, never from the page's size in pixels, which is rounded.
    painter.scale(kResolution / kMmPerInch, kResolution / kMmPerInch);
    paintSheet(painter, drawing);
    painter.restore();
}

}  // namespace

QByteArray paintedPdf(const std::vector<PdfPage>& pages, const PdfProgress& progress) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setResolution(kResolution);
    writer.setPageLayout(layoutFor(pages.front().parts.front().drawing));
    QPainter painter(&writer);
    const int all = static_cast<int>(pages.size());
    bool isFirst = true;
    for (int page = 0; page < all; ++page) {
        if (progress && !progress(page, all)) return {};
        for (const PdfPart& part : pages[static_cast<std::size_t>(page)].parts) {
            if (!isFirst) {
                writer.setPageLayout(layoutFor(part.drawing));
                writer.newPage();
            }
            isFirst = false;
            paintPart(painter, part.drawing);
        }
    }
    painter.end();
    if (progress && !progress(all, all)) return {};
    return bytes;
}

}  // namespace coutil
