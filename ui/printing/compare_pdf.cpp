#include "ui/printing/compare_pdf.h"

#include <QTimeZone>

#include "ui/words/revision_words.h"

namespace coutil {

ComparePaper comparePaper(const Folio& folio, const ComparedStates& states, const QDate& madeOn,
                          double factor) {
    ComparePaper paper;
    paper.factor = factor;
    paper.unit = folio.unit;
    if (madeOn.isValid()) paper.madeOn = dateText(madeOn.toString(Qt::ISODate).toStdString());
    paper.alterations = alterationsTold(folio, states, folio.unit);
    return paper;
}

Outcome<PdfEnd> writeComparePdf(const ComparedStates& states, const ComparePaper& paper,
                                const QDate& madeOn, const QString& path) {
    PdfInfo info;
    info.title = titleOf(states);
    if (madeOn.isValid()) info.date = QDateTime(madeOn, QTime(0, 0), QTimeZone::utc());
    return writeSheetsPdf(comparePages(states, paper), info, path);
}

}  // namespace coutil
