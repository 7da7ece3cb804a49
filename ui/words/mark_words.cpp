#include "ui/words/mark_words.h"

#include <QCoreApplication>

#include "ui/words/alteration_places.h"
#include "ui/words/alteration_words.h"
#include "ui/words/trade_words.h"

namespace coutil {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(MarkWords)
};

struct PlaceText {
    LengthUnit unit;

    QString operator()(std::monostate) const { return {}; }
    QString operator()(const SeamPlace& place) const {
        return Words::tr("%1 at %2", "seam at a seam position")
            .arg(seamName(place.seam), seamPositionText(place.positionMm, unit));
    }
    QString operator()(const TuckPlace& place) const {
        return Words::tr("inside panel %1, %2")
            .arg(panelName(place.panel), heightPlaceText({.heightMm = place.heightMm}, unit));
    }
    QString operator()(const SlitPlace& place) const {
        const QString edge = edgeName(std::string(keyOf(place.from)));
        return Words::tr("slit %1 long in panel %2 from the %3, %4 from its front end")
            .arg(lengthText(place.lengthMm, unit), panelName(place.panel), edge,
                 lengthText(place.alongMm, unit));
    }
    QString operator()(const OnLinePlace& place) const {
        return Words::tr("%1 at %2", "top or bottom edge, at a seam or panel")
            .arg(edgeName(std::string(keyOf(place.line))), linePlaceText(place.at, unit));
    }
    QString operator()(const HeightPlace& place) const { return heightPlaceText(place, unit); }
};

}  // namespace

bool isNote(MarkKind kind) {
    return kind == MarkKind::gapes || kind == MarkKind::cutsIn || kind == MarkKind::bonePokes;
}

QString markPlaceText(const MarkPlace& place, LengthUnit unit) {
    return std::visit(PlaceText{unit}, place);
}

QString markAmountText(const Mark& mark, LengthUnit unit) {
    const QString term = markTerm(keyOf(mark.kind));
    return isNote(mark.kind)
               ? term
               : Words::tr("%1 %2", "pinned 8 mm").arg(term, lengthText(mark.amountMm, unit));
}

QString markSentence(const Mark& mark, LengthUnit unit) {
    const QString place = markPlaceText(mark.place, unit);
    const QString amount = markAmountText(mark, unit);
    QString text =
        place.isEmpty() ? amount : Words::tr("%1: %2", "place: pinned 8 mm").arg(place, amount);
    if (mark.side != BodySide::both) text += QStringLiteral(", ") + sideName(mark.side);
    return text;
}

}  // namespace coutil
