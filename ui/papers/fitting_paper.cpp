#include "ui/papers/fitting_paper.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>
#include <algorithm>

#include "ui/papers/fitting_table.h"
#include "ui/papers/page_writer.h"
#include "ui/papers/small_panels.h"

namespace coutil {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(FittingPaper)
};

QStringList howToFit() {
    return {
        Words::tr("You need somebody to help you. Never pin or cut on yourself, and never while "
                  "you wear it without help."),
        Words::tr("Tie a tape around your waist over the mock-up's waist line. Close it in front, "
                  "lace it evenly, snug but easy. Stand, sit down, breathe in deep, lift your "
                  "arms."),
        Words::tr("Too loose at a seam: pinch the cloth there until it lies flat and pin it along "
                  "the seam. Use pins with large heads, points away from the body, a hand or a "
                  "piece of card between pin and skin."),
        Words::tr("Too tight at a seam: take the mock-up OFF or unlace it, cut the stitches of "
                  "that seam open, only along the seam, only as far as it is tight, with blunt "
                  "scissors and away from the body. Lace again: the seam gapes by what is "
                  "missing."),
        Words::tr("Measure at the levels of the table. Pinned: the width of the pinched fold laid "
                  "flat, times two. Opened: the width of the gap. Write every figure into the "
                  "table; a line through a row where it fits well."),
        Words::tr("Take photographs from the front, the back and both sides, with the tape around "
                  "the waist. Leave all pins in, and send everything back.")};
}

QString cautions() {
    return Words::tr(
        "Stop at once and unlace at pain, numbness, tingling, dizziness or short breath. Do not "
        "wear the mock-up longer than twenty minutes, and not after a meal. With a weak heart or "
        "lungs, high blood pressure, a fresh wound or a child expected: not without your "
        "doctor's word, which goes before anything on this sheet.");
}

double writeSteps(PageWriter& page, double top) {
    double y = top;
    int number = 0;
    for (const QString& step : howToFit()) {
        page.text(QString::number(++number), {page.leftMm(), y + letters::kText}, letters::kText);
        y = page.paragraph(step, page.leftMm() + 6, y, page.roomMm() - 6, letters::kText) + 0.8;
    }
    return y + 1;
}

double writeCautions(PageWriter& page, double top) {
    const double wide = page.roomMm() - 8;
    const double high = PageWriter::heightOf(cautions(), wide, letters::kText) + 5;
    page.box({page.leftMm(), top, page.roomMm(), high}, 0.5);
    page.paragraph(cautions(), page.leftMm() + 4, top + 3, wide, letters::kText);
    return top + high + 4;
}

double writeReturn(PageWriter& page, const QDate& returnBy, double top) {
    double y = top;
    if (returnBy.isValid()) {
        const QString day = QLocale().toString(returnBy, QLocale::LongFormat);
        y += letters::kHeading;
        page.text(Words::tr("Please send it back by %1.").arg(day), {page.leftMm(), y},
                  letters::kHeading, page.roomMm());
        y += 6;
    }
    y += letters::kText;
    const double third = page.roomMm() / 2;
    page.writeLine(Words::tr("Tried on"), {page.leftMm(), y}, page.leftMm() + third - 4,
                   letters::kText);
    page.writeLine(Words::tr("Who helped"), {page.leftMm() + third, y}, page.rightMm(),
                   letters::kText);
    return y + 5;
}

// Lines to write on down to the foot of the page.
void writeRemarks(PageWriter& page, double top) {
    double y = page.paragraph(
        Words::tr("Your remarks: where does it gape, cut in or poke? Is the upper edge too high or "
                  "too low, in front, at the side, at the back? Can you sit?"),
        page.leftMm(), top, page.roomMm(), letters::kText);
    for (y += 7; y < page.bottomMm() - 1; y += 7.5) {
        page.line({page.leftMm(), y}, {page.rightMm(), y}, 0.15);
    }
}

}  // namespace

std::vector<SheetDrawing> fittingPaper(const Pattern& pattern, const PaperHead& head,
                                       const QDate& returnBy) {
    PageWriter page(head.paper, kPaperMarginMm, paperFooter(head));
    double y = writePaperHead(page, Words::tr("Fitting sheet for the mock-up"), head);
    y = writeReturn(page, returnBy, y);
    y = writeSteps(page, y);
    y = writeCautions(page, y);
    drawSmallPanels(page, pattern, {page.leftMm(), y, page.roomMm(), page.bottomMm() - y});
    page.newPage();
    y = writeFittingTable(page, pattern, head.unit, page.topMm(), 48);
    y = writeLacingGap(page, pattern, head.unit, y + 4);
    writeRemarks(page, y + 3);
    return page.finished();
}

}  // namespace coutil
