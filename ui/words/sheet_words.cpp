#include "ui/words/sheet_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

#include "core/block/style.h"
#include "ui/words/trade_words.h"

namespace coutil {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Sheets)
};

std::string text(const QString& words) { return words.toStdString(); }

// A factor as it is typed in: four decimals, the user's decimal mark.
QString factorText(double factor) { return QLocale().toString(factor, 'f', 4); }

QString correctionHint(const SheetOptions& options) {
    QString hint =
        Words::tr(
            "If a side is off, type what you measured into the Print bench and print this page "
            "again. On the command line give the correction: 100 divided by what you measured in "
            "mm (99.5 measured: %1). One figure goes across the short side of the paper, one along "
            "its long side.")
            .arg(factorText(100 / 99.5));
    if (options.scaleX != 1 || options.scaleY != 1) {
        hint += QLatin1Char('\n') +
                Words::tr(
                    "This page was made with corrections %1 (across) and %2 (along). If it is "
                    "still off, the Print bench builds on them; on the command line multiply them "
                    "by the new figure.")
                    .arg(factorText(options.scaleX), factorText(options.scaleY));
    }
    return hint;
}

QString estimateLines(const std::vector<Estimate>& estimates, LengthUnit unit) {
    if (estimates.empty()) return {};
    QStringList lines{Words::tr("Estimated, not measured; measure before cutting good cloth:")};
    for (const Estimate& estimate : estimates) {
        lines << Words::tr("%1: %2, likely within %3")
                     .arg(measurementTerm(estimate.id), lengthText(estimate.valueMm, unit),
                          lengthText(2 * estimate.sdMm, unit));
    }
    return lines.join(QLatin1Char('\n'));
}

void addInstructions(const SheetOptions& options, SheetWords& words) {
    words.firstSheet = text(Words::tr("Measure this page first"));
    words.scaleNote = text(Words::tr("Print at 100 % (actual size), never fit to page"));
    words.measureFirst = text(Words::tr(
        "Print this page alone first. Measure the square with a ruler in both directions, across "
        "and upwards: each side must be 100 mm, give or take half a millimetre. Or measure both "
        "bars: 4 in. Print the rest only when both directions are right."));
    words.measureBeforeCutting = text(Words::tr(
        "Before you cut anything: measure the square with a ruler in both directions, across and "
        "upwards: each side must be 100 mm, give or take half a millimetre. Or measure both bars: "
        "4 in. Cut only when both directions are right."));
    words.correctionHint = text(correctionHint(options));
    words.joinHint = text(Words::tr(
        "Joining: cut off the left and the upper edge of a sheet along its frame wherever it has a "
        "neighbour there. Lay it on the neighbour's dashed line so that crosses meet and the two "
        "halves of each numbered mark make one. Tape."));
    words.square = text(Words::tr("100 mm"));
    words.bar = text(Words::tr("4 in"));
}

void addLabels(SheetWords& words) {
    words.pageOf = text(Words::tr("page %1 of %2"));
    words.sheetLabel = text(Words::tr("Sheet %1"));
    words.mapHeading = text(Words::tr("Sheet map, %1 sheets"));
    words.pencil = text(Words::tr("pencil"));
    words.revision = text(Words::tr("revision %1"));
    words.cutCount = text(Words::tr("cut %1"));
    words.mirroredPair = text(Words::tr("one mirrored"));
    words.mirroredTwin = text(Words::tr("mirrored"));
    words.onFold = text(Words::tr("on the fold"));
    words.panel = text(Words::tr("panel %1"));
    words.leftSide = text(Words::tr("left"));
    words.rightSide = text(Words::tr("right"));
    words.grain = text(Words::tr("grain"));
}

}  // namespace

SheetWords sheetWords(const TracingTitle& title, const std::vector<Estimate>& estimates,
                      const SheetOptions& options, LengthUnit unit) {
    SheetWords words;
    words.title = title;
    addInstructions(options, words);
    addLabels(words);
    words.estimates = text(estimateLines(estimates, unit));
    words.cautions = {
        text(Words::tr("Sew a mock-up from these sheets before cutting good cloth."))};
    if (title.isPencil) {
        words.cautions.push_back(
            text(Words::tr("Pencil: this state is not confirmed and may still change.")));
    }
    for (const LevelId level : kAllLevels) {
        const std::string key(keyOf(level));
        words.levels[key] = text(levelName(key));
    }
    return words;
}

QString paperName(const Paper& paper) {
    return paper.isOnePage ? Words::tr("One big page") : QString::fromStdString(paper.name);
}

}  // namespace coutil
