#include "ui/printing/print_sheets.h"

#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPrintEngine>
#include <QStringList>
#include <algorithm>

#include "ui/printing/sheet_painter.h"

namespace coutil {
namespace {

constexpr double kMmPerInch = 25.4;

// CUPS options of a job, as the CUPS print plugin of Qt 6 names the property; other plugins don't
// know it and do nothing.
constexpr auto kCupsOptions = QPrintEngine::PrintEnginePropertyKey(0xfe00);

// Print queues fit and fill by default on many systems: 100 mm may come out as 91.
void askForTrueScale(QPrinter& printer) {
    QPrintEngine* engine = printer.printEngine();
    if (engine == nullptr) return;
    const QString key = QStringLiteral("print-scaling");
    QStringList options = engine->property(kCupsOptions).toStringList();
    for (qsizetype i = options.indexOf(key); i >= 0 && i + 1 < options.size();
         i = options.indexOf(key)) {
        options.remove(i, 2);
    }
    engine->setProperty(kCupsOptions, options << key << QStringLiteral("none"));
}

}  // namespace

void setUpPrinter(QPrinter& printer, const std::vector<SheetDrawing>& drawings) {
    if (drawings.empty()) return;
    const SheetDrawing& first = drawings.front();
    const bool isLandscape = first.widthMm > first.heightMm;
    const QSizeF upright(std::min(first.widthMm, first.heightMm),
                         std::max(first.widthMm, first.heightMm));
    QPageLayout layout(
        QPageSize(upright, QPageSize::Millimeter, QString(), QPageSize::FuzzyOrientationMatch),
        isLandscape ? QPageLayout::Landscape : QPageLayout::Portrait, QMarginsF());
    layout.setMode(QPageLayout::FullPageMode);
    printer.setFullPage(true);
    // Size and direction in one call: set apart, some print systems lose the direction.
    printer.setPageLayout(layout);
    askForTrueScale(printer);
}

double unprintableMarginMm(const QPrinter& printer) {
    const QPageLayout layout = printer.pageLayout();
    const double toMm = kMmPerInch / 72;
    QPageLayout inPoints = layout;
    inPoints.setUnits(QPageLayout::Point);
    const QMarginsF m = inPoints.minimumMargins();
    return toMm * std::max({m.left(), m.right(), m.top(), m.bottom()});
}

Outcome<PdfEnd> printSheets(QPrinter& printer, const std::vector<SheetDrawing>& drawings,
                            std::size_t first, std::size_t last, const PdfProgress& progress) {
    if (first > last || last >= drawings.size()) return PdfEnd::stopped;
    setUpPrinter(printer, drawings);
    QPainter painter;
    if (!painter.begin(&printer)) {
        Problem problem;
        problem.code = ProblemCode::fileUnwritable;
        problem.subject = printer.printerName().toStdString();
        return problem;
    }
    const double unitsPerMm = printer.resolution() / kMmPerInch;
    const int all = static_cast<int>(last - first + 1);
    for (int page = 0; page < all; ++page) {
        if (progress && !progress(page, all)) {
            printer.abort();
            return PdfEnd::stopped;
        }
        if (page > 0) printer.newPage();
        painter.save();
        painter.resetTransform();
        painter.scale(unitsPerMm, unitsPerMm);
        paintSheet(painter, drawings[first + static_cast<std::size_t>(page)]);
        painter.restore();
    }
    painter.end();
    if (progress) progress(all, all);
    return PdfEnd::written;
}

}  // namespace coutil
