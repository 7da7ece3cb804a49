#include "ui/canvas/label_places.h"

#include <QFontMetricsF>
#include <algorithm>
#include <array>
#include <optional>

namespace coutil {

namespace {

constexpr std::array kSizesPx{11, 10, 9};
constexpr double kOffPanelPx = 5;
constexpr double kSmallestOutsidePxPerMm = 0.35;

QSizeF sizeOf(const ScenePanel& panel, const TableLook& look, int sizePx) {
    QFont font(look.font);
    font.setPixelSize(sizePx);
    const QFontMetricsF metrics(font);
    double widest = 0;
    for (const QString& line : panel.label) {
        widest = std::max(widest, metrics.horizontalAdvance(line));
    }
    return {widest, static_cast<double>(panel.label.size()) * metrics.lineSpacing()};
}

std::optional<LabelPlace> inside(const ScenePanel& panel, const TableLook& look, int sizePx) {
    const QSizeF size = sizeOf(panel, look, sizePx);
    const QRectF room = look.view.toPx(panel.labelRoom);
    if (size.width() > room.width() || size.height() > room.height()) return std::nullopt;
    LabelPlace place{QRectF(QPointF(), size), sizePx, true};
    place.box.moveCenter(room.center());
    return place;
}

bool isFree(const QRectF& box, const TableLook& look, const std::vector<LabelPlace>& taken) {
    const QRectF wide = box.adjusted(-2, -2, 2, 2);
    return !isCrossed(look.scene, look.flat, look.view, wide) &&
           std::none_of(taken.begin(), taken.end(), [&](const LabelPlace& other) {
               return other.sizePx > 0 && other.box.intersects(wide);
           });
}

std::optional<LabelPlace> outside(std::size_t index, const TableLook& look, int sizePx,
                                  const std::vector<LabelPlace>& taken) {
    if (look.view.pxPerMm() < kSmallestOutsidePxPerMm) return std::nullopt;
    const QSizeF size = sizeOf(look.scene.panels[index], look, sizePx);
    const QRectF panel = look.view.toPx(look.flat.panels[index].box);
    const double left = panel.center().x() - size.width() / 2;
    for (const double top :
         {panel.bottom() + kOffPanelPx, panel.top() - kOffPanelPx - size.height()}) {
        const LabelPlace place{QRectF(QPointF(left, top), size), sizePx, false};
        if (isFree(place.box, look, taken)) return place;
    }
    return std::nullopt;
}

std::optional<LabelPlace> placed(std::size_t index, const TableLook& look, int sizePx,
                                 bool isInside, const std::vector<LabelPlace>& taken) {
    return isInside ? inside(look.scene.panels[index], look, sizePx)
                    : outside(index, look, sizePx, taken);
}

// All labels in one size on the same side of the lines, or nothing.
std::optional<std::vector<LabelPlace>> allAlike(const TableLook& look, int sizePx, bool isInside) {
    std::vector<LabelPlace> places;
    for (std::size_t i = 0; i < look.scene.panels.size(); ++i) {
        LabelPlace place;
        if (!look.scene.panels[i].label.isEmpty()) {
            const auto found = placed(i, look, sizePx, isInside, places);
            if (!found) return std::nullopt;
            place = *found;
        }
        places.push_back(place);
    }
    return places;
}

LabelPlace asItCan(std::size_t index, const TableLook& look, const std::vector<LabelPlace>& taken) {
    for (const bool isInside : {true, false}) {
        for (const int sizePx : kSizesPx) {
            if (const auto found = placed(index, look, sizePx, isInside, taken)) return *found;
        }
    }
    return {};
}

}  // namespace

std::vector<LabelPlace> labelPlaces(const TableLook& look) {
    for (const bool isInside : {true, false}) {
        for (const int sizePx : kSizesPx) {
            if (auto places = allAlike(look, sizePx, isInside)) return *places;
        }
    }
    std::vector<LabelPlace> places;
    for (std::size_t i = 0; i < look.scene.panels.size(); ++i) {
        places.push_back(look.scene.panels[i].label.isEmpty() ? LabelPlace{}
                                                              : asItCan(i, look, places));
    }
    return places;
}

}  // namespace coutil
