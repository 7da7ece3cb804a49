#include <QPainter>

#include "ui/canvas/scene_painter.h"
#include "ui/canvas/sign_places.h"

namespace coutil {

namespace {

constexpr double kArrowPx = 13;  // from tip to end
constexpr double kHeadPx = 5;
constexpr double kGapPx = 2;  // between the place and a tip that points at it

void paintArrow(QPainter& painter, const QPointF& tip, const QPointF& direction) {
    const QPointF across(-direction.y(), direction.x());
    painter.drawLine(tip, tip - direction * kArrowPx);
    painter.drawLine(tip, tip - direction * kHeadPx + across * kHeadPx * 0.7);
    painter.drawLine(tip, tip - direction * kHeadPx - across * kHeadPx * 0.7);
}

void paintShape(QPainter& painter, const SceneSign& sign, const QPointF& at,
                const QPointF& direction) {
    switch (sign.shape) {
        case SceneSign::Shape::towards:
            paintArrow(painter, at - direction * kGapPx, direction);
            paintArrow(painter, at + direction * kGapPx, -direction);
            return;
        case SceneSign::Shape::apart:
            paintArrow(painter, at + direction * (kArrowPx + kGapPx), direction);
            paintArrow(painter, at - direction * (kArrowPx + kGapPx), -direction);
            return;
        case SceneSign::Shape::along:
            paintArrow(painter, at + direction * (kArrowPx + kGapPx), direction);
            return;
        case SceneSign::Shape::dot:
            painter.drawEllipse(at, 4, 4);
            return;
    }
}

// Words on a patch of paper: they must be read across any line.
void paintWords(QPainter& painter, const TableLook& look, const SceneSign& sign,
                const QRectF& box) {
    if (sign.words.isEmpty()) return;
    QColor patch(look.colours.paper);
    patch.setAlpha(210);
    painter.fillRect(box, patch);
    painter.drawText(box, Qt::AlignCenter | Qt::TextDontClip, sign.words);
}

}  // namespace

void paintSigns(QPainter& painter, const TableLook& look) {
    if (look.scene.signs.empty()) return;
    painter.save();
    painter.setFont(look.font);
    painter.setBrush(Qt::NoBrush);
    const std::vector<SignPlace> places = signPlaces(look);
    for (std::size_t i = 0; i < places.size(); ++i) {
        const SceneSign& sign = look.scene.signs[i];
        const QPointF at = look.view.toPx(sign.atMm);
        if (!look.area.contains(at)) continue;
        const QColor colour = sign.isPale  ? look.colours.before
                              : sign.isLit ? look.colours.halo
                                           : look.colours.text;
        painter.setPen(QPen(colour, sign.isLit ? 2.4 : 1.6, Qt::SolidLine, Qt::RoundCap));
        paintShape(painter, sign, at, QPointF(sign.direction.x(), -sign.direction.y()));
        painter.setPen(sign.isLit ? look.colours.halo : look.colours.text);
        paintWords(painter, look, sign, places[i].words);
    }
    painter.restore();
}

}  // namespace coutil
