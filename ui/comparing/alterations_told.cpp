// The alterations between two states, in words.
#include <QCoreApplication>
#include <span>

#include "ui/comparing/compared_figures.h"
#include "ui/words/alteration_sentence.h"
#include "ui/words/revision_words.h"

namespace coutil {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(ComparedFigures)
};

QString whereFrom(const DatedAlteration& dated) {
    if (dated.revision == 0) return Words::tr("pencil");
    return Words::tr("revision %1, %2").arg(dated.revision).arg(dateText(dated.confirmedOn));
}

QString told(const Folio& folio, const DatedAlteration& dated, LengthUnit unit) {
    const QString change =
        alterationSentences(std::span(&dated.alteration, 1), {&folio, nullptr}, unit)
            .join(QStringLiteral("; "));
    const QString why = QString::fromStdString(dated.alteration.why).trimmed();
    return why.isEmpty()
               ? Words::tr("%1 (%2)", "alteration, revision").arg(change, whereFrom(dated))
               : Words::tr("%1 (%2): %3", "alteration, revision, reason")
                     .arg(change, whereFrom(dated), why);
}

}  // namespace

QStringList alterationsTold(const Folio& folio, const ComparedStates& states, LengthUnit unit) {
    QStringList lines;
    for (const DatedAlteration& dated : states.between.onlyInA) {
        lines << Words::tr("only in A: %1").arg(told(folio, dated, unit));
    }
    for (const DatedAlteration& dated : states.between.onlyInB) {
        lines << (states.between.onlyInA.empty()
                      ? told(folio, dated, unit)
                      : Words::tr("only in B: %1").arg(told(folio, dated, unit)));
    }
    return lines;
}

}  // namespace coutil
