#include "ui/canvas/sign_places.h"

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>

namespace coutil {

namespace {

constexpr double kReachPx = 15;     // of the arrows
constexpr double kHalfWidthPx = 5;  // across them
constexpr double kAsidePx = 6;
constexpr double kAbovePx = 8;  // clear of arrows and of a handle between two edges

QRectF shapeBox(const SceneSign& sign, const QPointF& at) {
    const double wide = std::max(kHalfWidthPx, kReachPx * std::abs(sign.direction.x()));
    const double high = std::max(kHalfWidthPx, kReachPx * std::abs(sign.direction.y()));
    return {at.x() - wide, at.y() - high, 2 * wide, 2 * high};
}

// Near first: above and below, right, left and in the middle, then further off.
std::vector<QRectF> wordPlaces(const QSizeF& size, const QPointF& at) {
    std::vector<QRectF> places;
    places.reserve(18);
    for (const double aboveMore : {0.0, 10.0, 22.0}) {
        for (const double top :
             {at.y() - kAbovePx - aboveMore - size.height(), at.y() + kAbovePx + aboveMore}) {
            for (const double left :
                 {at.x() + kAsidePx, at.x() - kAsidePx - size.width(), at.x() - size.width() / 2})
                places.emplace_back(QPointF(left, top), size);
        }
    }
    return places;
}

}  // namespace

std::vector<SignPlace> signPlaces(const TableLook& look) {
    const QFontMetricsF metrics(look.font);
    std::vector<SignPlace> places;
    places.reserve(look.scene.signs.size());
    for (const SceneSign& sign : look.scene.signs)
        places.push_back({shapeBox(sign, look.view.toPx(sign.atMm)), {}});
    for (std::size_t i = 0; i < places.size(); ++i) {
        const SceneSign& sign = look.scene.signs[i];
        if (sign.words.isEmpty()) continue;
        const QSizeF size(metrics.horizontalAdvance(sign.words) + 4, metrics.height());
        const auto touchesWords = [&](const QRectF& box) {
            return std::ranges::any_of(
                places, [&](const SignPlace& other) { return other.words.intersects(box); });
        };
        const auto isFree = [&](const QRectF& box) {
            return !touchesWords(box) && !isCrossed(look.scene, look.flat, look.view, box) &&
                   std::ranges::none_of(
                       places, [&](const SignPlace& other) { return other.shape.intersects(box); });
        };
        const auto near = wordPlaces(size, look.view.toPx(sign.atMm));
        auto found = std::ranges::find_if(near, isFree);
        if (found == near.end()) found = std::ranges::find_if_not(near, touchesWords);
        places[i].words = found == near.end() ? near.front() : *found;
    }
    return places;
}

}  // namespace coutil
