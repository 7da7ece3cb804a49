#include "ui/words/alteration_places.h"

#include <QCoreApplication>
#include <cmath>

#include "core/block/style.h"
#include "core/geometry/tolerances.h"
#include "ui/words/alteration_words.h"
#include "ui/words/trade_words.h"

namespace coutil {

namespace {

struct Places {
    Q_DECLARE_TR_FUNCTIONS(AlterationPlaces)
};

bool isNothing(double mm) { return std::abs(mm) < tolerance::kInkGridMm; }

QString level(const std::string& key) {
    const QString name = levelName(key);
    // A level of the maker's own has a name, not an article.
    return levelNamed(key) ? Places::tr("at the %1", "level").arg(name)
                           : Places::tr("at %1", "level of the maker's own").arg(name);
}

}  // namespace

QString seamName(const std::string& seamOrEdge) {
    const QString known = edgeName(seamOrEdge);
    const bool isBare =
        !seamOrEdge.empty() && seamOrEdge.front() >= '0' && seamOrEdge.front() <= '9';
    return isBare ? edgeName("seam " + seamOrEdge) : known;
}

QString seamPositionText(double mm, LengthUnit unit) {
    if (isNothing(mm)) return Places::tr("the waist", "seam position 0");
    const QChar sign = mm > 0 ? QLatin1Char('+') : QChar(0x2212);
    return sign + lengthText(std::abs(mm), unit);
}

QString edgePlaceText(const EdgePlace& place, LengthUnit unit) {
    if (place.edge == keyOf(EdgeLine::top) || place.edge == keyOf(EdgeLine::bottom)) {
        return Places::tr("%1, %2 from its front end")
            .arg(edgeName(place.edge), lengthText(place.alongMm, unit));
    }
    return Places::tr("%1 at %2", "seam at a seam position")
        .arg(seamName(place.edge), seamPositionText(place.alongMm, unit));
}

QString linePlaceText(const LinePlace& place, LengthUnit unit) {
    if (!place.seam.empty()) return seamName(place.seam);
    return Places::tr("panel %1, %2 from its front end")
        .arg(panelName(place.panel), lengthText(place.alongMm, unit));
}

QString heightPlaceText(const HeightPlace& place, LengthUnit unit) {
    if (!place.level.empty()) return level(place.level);
    if (isNothing(place.heightMm)) return level(std::string(keyOf(LevelId::waist)));
    const QString length = lengthText(std::abs(place.heightMm), unit);
    return place.heightMm > 0 ? Places::tr("%1 over the waist").arg(length)
                              : Places::tr("%1 under the waist").arg(length);
}

QString movedByText(const Vector& mm, LengthUnit unit) {
    QString upDown;
    QString across;
    if (!isNothing(mm.y())) {
        const QString length = lengthText(std::abs(mm.y()), unit);
        upDown = mm.y() > 0 ? Places::tr("%1 up").arg(length) : Places::tr("%1 down").arg(length);
    }
    if (!isNothing(mm.x())) {  // panels lie with their front on the left
        const QString length = lengthText(std::abs(mm.x()), unit);
        across = mm.x() > 0 ? Places::tr("%1 towards the back").arg(length)
                            : Places::tr("%1 towards the front").arg(length);
    }
    if (upDown.isEmpty() || across.isEmpty()) return upDown + across;
    return Places::tr("%1 and %2", "two ways of one move").arg(upDown, across);
}

}  // namespace coutil
