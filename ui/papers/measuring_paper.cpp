#include "ui/papers/measuring_paper.h"

#include <QCoreApplication>
#include <QTransform>
#include <algorithm>

#include "ui/benches/measurement_groups.h"
#include "ui/benches/tape_line.h"
#include "ui/papers/page_writer.h"
#include "ui/words/trade_words.h"

namespace coutil {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(MeasuringPaper)
};

constexpr double kFigureWideMm = 22;
constexpr double kCellMm = 37;
constexpr double kBetweenMm = 6;

bool isUsed(Measurement id) {
    using enum Measurement;
    switch (id) {
        case upperChestGirth:
        case topHipGirth:
        case hipGirth:
        case bustPointWidth:
        case frontBustArc:
        case stature:
        case waistToUnderBust:
        case waistToBust:
        case waistToArmpit:
        case waistToHighHip:
        case waistToHip:
        case waistToLap:
            return true;
        default:
            return infoOf(id).isNeededForCorset;
    }
}

// The drawn body in a place of the page; y of the body is up.
void drawFigure(PageWriter& page, Measurement id, const QRectF& place) {
    const TapeLine tape = tapeLineOf(id);
    const QRectF frame = figureFrame(tape.view);
    const double scale = std::min(place.width() / frame.width(), place.height() / frame.height());
    QTransform toPage;
    toPage.translate(place.center().x(), place.center().y());
    toPage.scale(scale, -scale);
    toPage.translate(-frame.center().x(), -frame.center().y());
    page.drawing(bodyDetails(tape.view), toPage, place, 0.12, SheetInk::level);
    page.drawing(bodyOutline(tape.view), toPage, place, 0.18, SheetInk::mark);
    page.drawing(tape.levels, toPage, place, 0.15, SheetInk::text, SheetDash::dotted);
    page.drawing(tape.hidden, toPage, place, 0.2, SheetInk::text, SheetDash::dotted);
    page.drawing(tape.seen, toPage, place, 0.6);
    if (!tape.hasEnds) return;
    for (const QPointF& end : {tape.seen.pointAtPercent(0), tape.seen.pointAtPercent(1)}) {
        QPainterPath dot;
        dot.addEllipse(end, 0.35 / scale, 0.35 / scale);
        page.drawing(dot, toPage, place, 0.7);
    }
}

void writeCell(PageWriter& page, Measurement id, int number, const QRectF& cell, LengthUnit unit) {
    drawFigure(page, id, {cell.left(), cell.top() + 1, kFigureWideMm, cell.height() - 3});
    const double left = cell.left() + kFigureWideMm + 2;
    const double wide = cell.right() - left;
    QString name = QStringLiteral("%1  %2").arg(number).arg(measurementTerm(id));
    if (infoOf(id).isNeededForCorset) name += QStringLiteral(" *");
    page.text(name, {left, cell.top() + 4}, 2.7, wide);
    page.paragraph(measurementHow(id), left, cell.top() + 6, wide, letters::kSmall);
    const double y = cell.bottom() - 5;
    page.line({left, y}, {cell.right() - 9, y}, 0.25);
    page.text(unitName(unit), {cell.right() - 7.5, y}, letters::kText, 8);
}

double writeIntroduction(PageWriter& page, const PaperHead& head, double top) {
    double y = page.paragraph(
        Words::tr("Please let somebody measure you: alone the tape slips. You need a soft tape, a "
                  "string for the waist and a pencil. Wear what you will wear under the corset, "
                  "stand easily, breathe quietly. The tape lies on the skin and does not press in. "
                  "Write every figure as the tape shows it, take each one twice, and never "
                  "round. What you cannot take, leave empty. Those with a star are needed."),
        page.leftMm(), top, page.roomMm(), letters::kText);
    y = page.paragraph(head.unit == LengthUnit::inch
                           ? Words::tr("All figures in inches, to the nearest 1/8.")
                           : Words::tr("All figures in %1; one tenth of a centimetre counts.")
                                 .arg(unitName(head.unit)),
                       page.leftMm(), y + 1, page.roomMm(), letters::kText);
    y += 7;
    const double half = page.leftMm() + page.roomMm() / 2;
    page.writeLine(Words::tr("Measured on"), {page.leftMm(), y}, half - 4, letters::kText);
    page.writeLine(Words::tr("by"), {half, y}, page.rightMm(), letters::kText);
    return y + 5;
}

void writeRemarks(PageWriter& page, double top) {
    if (page.bottomMm() - top < 26) {
        page.newPage();
        top = page.topMm();
    }
    top = page.paragraph(
        Words::tr("Anything the maker should know: one hip or shoulder higher, a wound or a scar, "
                  "an illness of the heart or the lungs, a child expected. If you are unsure "
                  "whether you may be laced, ask your doctor first."),
        page.leftMm(), top + 2, page.roomMm(), letters::kText);
    for (double y = top + 8; y < std::min(top + 34, page.bottomMm()); y += 8) {
        page.line({page.leftMm(), y}, {page.rightMm(), y}, 0.15);
    }
}

}  // namespace

std::vector<Measurement> measurementsToAskFor() {
    std::vector<Measurement> ids;
    for (const MeasurementGroup& group : measurementGroups()) {
        std::ranges::copy_if(group.ids, std::back_inserter(ids), isUsed);
    }
    // The heights are measured from the waist string, so the waist comes first.
    std::stable_partition(ids.begin(), ids.end(),
                          [](Measurement id) { return id == Measurement::waistGirth; });
    return ids;
}

std::vector<SheetDrawing> measuringPaper(const PaperHead& head) {
    PageWriter page(head.paper, kPaperMarginMm, paperFooter(head));
    double y = writePaperHead(page, Words::tr("Measuring sheet"), head);
    y = writeIntroduction(page, head, y);
    const double wide = (page.roomMm() - kBetweenMm) / 2;
    int number = 0;
    for (const Measurement id : measurementsToAskFor()) {
        const bool isLeft = number % 2 == 0;
        if (isLeft && number > 0) y += kCellMm;
        if (isLeft && y + kCellMm > page.bottomMm()) {
            page.newPage();
            y = page.topMm();
        }
        const double x = page.leftMm() + (isLeft ? 0 : wide + kBetweenMm);
        writeCell(page, id, ++number, {x, y, wide, kCellMm}, head.unit);
    }
    writeRemarks(page, y + kCellMm);
    return page.finished();
}

}  // namespace coutil
