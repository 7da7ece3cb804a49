#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "ui/canvas/scene_painter.h"

namespace coutil {

namespace {

// Curves above 1 px leave Qt's fast line path; only the sewing line, the pattern itself, is worth
// it.
constexpr double kInkPx = 1.6;
constexpr double kPencilPx = 1.25;
constexpr double kHairlinePx = 1.0;
constexpr double kSmallestNumberPx = 9;
constexpr double kLargestNumberPx = 56;

QPen cosmetic(const QColor& colour, double widthPx, Qt::PenStyle style = Qt::SolidLine) {
    QPen pen(colour, widthPx, style, Qt::RoundCap, Qt::RoundJoin);
    pen.setCosmetic(true);
    return pen;
}

// The text block in the middle of a panel: the large number and the small label under it.
struct Block {
    QRectF number;
    int numberPx = 0;
    QRectF label;
    int labelPx = 0;
};

Block blockOf(const ScenePanel& panel, const TableLook& look) {
    Block block;
    const QRectF room = look.view.toPx(panel.numberRoom);
    const auto lines = static_cast<double>(panel.label.size());
    double height =
        std::min({room.height() * (lines > 0 ? 0.4 : 0.7), room.width() * 0.6, kLargestNumberPx});
    if (height < kSmallestNumberPx) return block;
    block.numberPx = static_cast<int>(height);
    const QPointF middle = room.center();
    const double width = height * 0.75 * std::max<double>(1, double(panel.number.size()));
    block.number = QRectF(middle.x() - width / 2, middle.y() - height / 2, width, height);
    if (lines == 0) return block;
    QFont font(look.font);
    font.setPixelSize(11);
    const QFontMetricsF metrics(font);
    double widest = 0;
    for (const QString& line : panel.label) {
        widest = std::max(widest, metrics.horizontalAdvance(line));
    }
    const double needed = height + lines * metrics.lineSpacing();
    block.number.moveTop(middle.y() - std::min(needed, room.height()) / 2);
    if (widest > room.width() || needed > room.height()) return block;
    block.labelPx = 11;
    block.label = QRectF(middle.x() - widest / 2, block.number.bottom(), widest,
                         lines * metrics.lineSpacing());
    return block;
}

void paintArrow(QPainter& painter, const QPointF& tip, const QPointF& from) {
    const QPointF along = tip - from;
    const double length = std::hypot(along.x(), along.y());
    if (length < 24) return;
    const QPointF u = along / length;
    const QPointF across(-u.y(), u.x());
    painter.drawLine(tip, tip - u * 9 + across * 3);
    painter.drawLine(tip, tip - u * 9 - across * 3);
}

// The grain line, open where number and label stand on it.
void paintGrain(QPainter& painter, const TableLook& look, const QLineF& grain, const Block& block) {
    const QPointF low = look.view.toPx(grain.p1());
    const QPointF high = look.view.toPx(grain.p2());
    painter.setPen(cosmetic(look.colours.cutting, kHairlinePx));
    paintArrow(painter, low, high);
    paintArrow(painter, high, low);
    const QRectF gap = block.number.united(block.label).adjusted(-4, -4, 4, 4);
    if (block.numberPx > 0 && low.x() > gap.left() && low.x() < gap.right() &&
        low.y() > gap.bottom() && high.y() < gap.top()) {
        painter.drawLine(low, QPointF(low.x(), gap.bottom()));
        painter.drawLine(QPointF(high.x(), gap.top()), high);
    } else {
        painter.drawLine(low, high);
    }
}

void paintBlock(QPainter& painter, const TableLook& look, const ScenePanel& panel,
                const Block& block) {
    if (block.numberPx == 0) return;
    QFont font(look.font);
    font.setPixelSize(block.numberPx);
    painter.setFont(font);
    painter.setPen(look.colours.paleNumber);
    painter.drawText(block.number, Qt::AlignCenter | Qt::TextDontClip, panel.number);
    if (block.labelPx == 0) return;
    font.setPixelSize(block.labelPx);
    painter.setFont(font);
    painter.setPen(look.colours.text);
    painter.drawText(block.label, Qt::AlignHCenter | Qt::AlignTop | Qt::TextDontClip,
                     panel.label.join('\n'));
}

void paintOutlines(QPainter& painter, const TableLook& look, const ScenePanel& panel,
                   const QColor& tint) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(tint);
    painter.drawPath(panel.cutting.isEmpty() ? panel.sewing : panel.cutting);
    painter.setBrush(Qt::NoBrush);
    if (!panel.cutting.isEmpty()) {
        painter.setPen(cosmetic(look.colours.cutting, kHairlinePx));
        painter.drawPath(panel.cutting);
    }
    const QColor line = look.scene.isPencil ? look.colours.graphite : look.colours.ink;
    const double width = look.scene.isPencil ? kPencilPx : kInkPx;
    const bool hasFold = std::any_of(panel.edges.begin(), panel.edges.end(),
                                     [](const SceneEdge& edge) { return edge.isFold; });
    painter.setPen(cosmetic(line, width));
    if (!hasFold) {
        painter.drawPath(panel.sewing);
        return;
    }
    for (const SceneEdge& edge : panel.edges) {
        painter.setPen(cosmetic(line, width, edge.isFold ? Qt::DashDotLine : Qt::SolidLine));
        painter.drawPath(edge.path);
    }
}

void paintMarks(QPainter& painter, const TableLook& look, const ScenePanel& panel) {
    painter.setPen(cosmetic(look.colours.level, kHairlinePx));
    for (const QLineF& level : panel.levels) {
        painter.drawLine(look.view.toPx(level.p1()), look.view.toPx(level.p2()));
    }
    painter.setPen(cosmetic(look.scene.isPencil ? look.colours.graphite : look.colours.ink, 1.25));
    for (const QLineF& notch : panel.notches) {
        painter.drawLine(look.view.toPx(notch.p1()), look.view.toPx(notch.p2()));
    }
}

}  // namespace

void paintPanels(QPainter& painter, const TableLook& look) {
    const QRectF seen = look.area.adjusted(-4, -4, 4, 4);
    for (std::size_t i = 0; i < look.scene.panels.size(); ++i) {
        if (!look.view.toPx(look.flat.panels[i].box).intersects(seen)) continue;
        const ScenePanel& panel = look.scene.panels[i];
        painter.save();
        painter.setTransform(look.view.transform(), true);
        paintOutlines(painter, look, panel, look.colours.tints[i % look.colours.tints.size()]);
        painter.restore();
        const Block block = blockOf(panel, look);
        if (panel.grain) paintGrain(painter, look, *panel.grain, block);
        paintMarks(painter, look, panel);
        paintBlock(painter, look, panel, block);
    }
}

}  // namespace coutil
