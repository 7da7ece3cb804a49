#include "ui/words/alteration_sentence.h"

#include <QCoreApplication>
#include <cmath>

#include "core/geometry/tolerances.h"
#include "ui/words/alteration_places.h"
#include "ui/words/alteration_words.h"
#include "ui/words/revision_words.h"
#include "ui/words/style_difference.h"
#include "ui/words/trade_words.h"

namespace coutil {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(AlterationSentence)
};

QString listed(const QStringList& parts) { return parts.join(QStringLiteral(", ")); }

// One wording an overload: what each kind of change does.
struct Told {
    LengthUnit unit;

    [[nodiscard]] QString length(double mm) const { return lengthText(std::abs(mm), unit); }

    [[nodiscard]] QString takenIn(double mm) const {
        if (std::abs(mm) < tolerance::kInkGridMm) return Words::tr("nothing", "amount");
        if (unit == LengthUnit::inch) {  // "1/4 in in" is no English
            return (mm > 0 ? Words::tr("%1 taken in") : Words::tr("%1 let out")).arg(length(mm));
        }
        return (mm > 0 ? Words::tr("%1 in", "taken in") : Words::tr("%1 out", "let out"))
            .arg(length(mm));
    }

    QString operator()(const ShapeSeam& change) const {
        QStringList readings;
        for (const AmountAt& amount : change.amounts) {
            readings.append(
                Words::tr("%1 at %2", "amount at a seam position")
                    .arg(takenIn(amount.amountMm), seamPositionText(amount.positionMm, unit)));
        }
        if (readings.isEmpty()) readings.append(takenIn(0));
        return Words::tr("%1: %2", "seam: readings").arg(seamName(change.seam), listed(readings));
    }

    QString operator()(const OpenPanel& change) const {
        const QString pattern = change.amountMm < 0 ? Words::tr("panel %1: closed by %2 at %3")
                                                    : Words::tr("panel %1: opened by %2 at %3");
        QString text = pattern.arg(panelName(change.panel), length(change.amountMm),
                                   edgePlaceText(change.mouth, unit));
        if (change.hinge) {
            text = Words::tr("%1, hinged at %2").arg(text, edgePlaceText(*change.hinge, unit));
        }
        if (change.slitLengthMm) {
            text = Words::tr("%1, slit %2 long").arg(text, length(*change.slitLengthMm));
        }
        return text;
    }

    QString operator()(const ChangeLength& change) const {
        const QString pattern = change.amountMm < 0
                                    ? Words::tr("shortened %1 %2", "length, place")
                                    : Words::tr("lengthened %1 %2", "length, place");
        QString text = pattern.arg(length(change.amountMm), heightPlaceText(change.at, unit));
        if (!change.taper) return text;
        return Words::tr("%1, from %2 to nothing at %3")
            .arg(text, seamName(change.taper->from), seamName(change.taper->to));
    }

    QString operator()(const ReshapeEdge& change) const {
        QStringList readings;
        for (const LineAmount& amount : change.amounts) {
            const QString pattern =
                amount.amountMm < 0 ? Words::tr("lowered %1 at %2") : Words::tr("raised %1 at %2");
            readings.append(
                pattern.arg(length(amount.amountMm), linePlaceText(amount.place, unit)));
        }
        if (readings.isEmpty()) readings.append(takenIn(0));
        return Words::tr("%1: %2", "seam: readings")
            .arg(edgeName(std::string(keyOf(change.line))), listed(readings));
    }

    QString operator()(const MoveLevel& change) const {
        QStringList moves;
        const QString upDown = movedByText(Vector(0, change.upMm), unit);
        if (!upDown.isEmpty()) moves.append(Words::tr("moved %1").arg(upDown));
        if (std::abs(change.widerMm) >= tolerance::kInkGridMm) {
            const QString pattern = change.widerMm > 0
                                        ? Words::tr("bust points %1 further apart")
                                        : Words::tr("bust points %1 closer together");
            moves.append(pattern.arg(length(change.widerMm)));
        }
        if (moves.isEmpty()) moves.append(Words::tr("not moved"));
        return Words::tr("%1: %2", "level: moves").arg(levelName(change.level), listed(moves));
    }

    [[nodiscard]] QString moved(const Vector& by) const {
        const QString way = movedByText(by, unit);
        return way.isEmpty() ? Words::tr("not moved") : Words::tr("moved %1").arg(way);
    }

    QString operator()(const MoveCorner& change) const {
        const QString pattern = change.end == EdgeLine::top
                                    ? Words::tr("panel %1: upper end of %2 %3")
                                    : Words::tr("panel %1: lower end of %2 %3");
        return pattern.arg(panelName(change.panel), seamName(change.edge), moved(change.byMm));
    }

    QString operator()(const MoveHandle& change) const {
        return Words::tr("panel %1: handle %2 of curve %3 of %4 %5")
            .arg(panelName(change.panel))
            .arg(change.handle)
            .arg(change.piece + 1)
            .arg(seamName(change.edge), moved(change.byMm));
    }

    QString operator()(const SplitPanel& change) const {
        return Words::tr(
                   "panel %1: split by a new seam, %2 from the front end of the bottom edge, "
                   "%3 at the top edge")
            .arg(panelName(change.panel), length(change.bottomAlongMm), length(change.topAlongMm));
    }

    QString operator()(const JoinPanels& change) const {
        return Words::tr("%1 given up, its panels joined").arg(seamName(change.seam));
    }

    QString operator()(const MakeSymmetric& change) const {
        switch (change.from) {
            case SymmetrySource::mean:
                return Words::tr("both sides made equal, halfway between them");
            case SymmetrySource::left:
                return Words::tr("both sides made as the left one");
            case SymmetrySource::right:
                return Words::tr("both sides made as the right one");
        }
        return {};
    }

    QString operator()(const ChangeStyle&) const { return Words::tr("other style"); }
    QString operator()(const TakeMeasurements&) const { return Words::tr("new measurements"); }
};

QString styleSentence(const ChangeStyle& change, const Style* before) {
    const QStringList terms =
        before == nullptr ? QStringList() : styleDifference(*before, change.style);
    if (terms.isEmpty()) return Words::tr("other style");
    return Words::tr("other style: %1").arg(listed(terms));
}

QString measurementsSentence(const TakeMeasurements& change, const Folio* folio) {
    const MeasurementSet* set =
        folio == nullptr ? nullptr : findMeasurementSet(*folio, change.measurementSet);
    if (set == nullptr) return Words::tr("new measurements");
    return Words::tr("new measurements of %1").arg(dateText(set->takenOn));
}

}  // namespace

QString alterationSentence(const Alteration& alteration, LengthUnit unit) {
    QString text = std::visit(Told{unit}, alteration.change);
    if (alteration.side == BodySide::both) return text;
    return Words::tr("%1, %2", "alteration, side").arg(text, sideName(alteration.side));
}

QStringList alterationSentences(std::span<const Alteration> alterations,
                                const SentenceGround& ground, LengthUnit unit) {
    QStringList sentences;
    const Style* before = ground.before;
    for (const Alteration& alteration : alterations) {
        if (!alteration.isOn) continue;
        if (const auto* style = std::get_if<ChangeStyle>(&alteration.change)) {
            sentences.append(styleSentence(*style, before));
            before = &style->style;
        } else if (const auto* set = std::get_if<TakeMeasurements>(&alteration.change)) {
            sentences.append(measurementsSentence(*set, ground.folio));
        } else {
            sentences.append(alterationSentence(alteration, unit));
        }
    }
    return sentences;
}

}  // namespace coutil
