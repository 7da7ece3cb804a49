#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>
#include <vector>

#include "ui/canvas/label_places.h"
#include "ui/canvas/scene_painter.h"

namespace coutil {

namespace {

constexpr double kHairlinePx = 1.0;
constexpr double kSmallestNumberPx = 9;
constexpr double kLargestNumberPx = 56;

QPen cosmetic(const QColor& colour, double widthPx, Qt::PenStyle style = Qt::SolidLine) {
    QPen pen(colour, widthPx, style, Qt::RoundCap, Qt::RoundJoin);
    pen.setCosmetic(true);
    return pen;
}

// Where number and label stand on the screen; sizes of 0 leave them out.
struct Block {
    QRectF number;
    int numberPx = 0;
    LabelPlace label;
};

Block blockOf(const ScenePanel& panel, const TableLook& look, const LabelPlace& label) {
    Block block;
    block.label = label;
    const QRectF room = look.view.toPx(panel.numberRoom);
    const double letters = std::max(1.0, static_cast<double>(panel.number.size()));
    const double high =
        std::min({room.height() * 0.8, room.width() * 0.9 / letters, kLargestNumberPx});
    if (high < kSmallestNumberPx) return block;
    block.numberPx = static_cast<int>(high);
    block.number = QRectF(0, 0, high * 0.75 * letters, high);
    block.number.moveCenter(room.center());
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

// The part of a segment inside a rectangle as parameters 0..1; nothing where it passes by.
std::optional<std::pair<double, double>> partInside(const QLineF& line, const QRectF& box) {
    double from = 0;
    double to = 1;
    const auto cut = [&](double p, double q) {
        if (p == 0) return q >= 0;
        (p < 0 ? from : to) = p < 0 ? std::max(from, q / p) : std::min(to, q / p);
        return from < to;
    };
    if (cut(-line.dx(), line.x1() - box.left()) && cut(line.dx(), box.right() - line.x1()) &&
        cut(-line.dy(), line.y1() - box.top()) && cut(line.dy(), box.bottom() - line.y1())) {
        return std::pair(from, to);
    }
    return std::nullopt;
}

// The grain line, open where number and label stand; an end that would lie under them draws back.
void paintGrain(QPainter& painter, const TableLook& look, const QLineF& grain, const Block& block) {
    QLineF line(look.view.toPx(grain.p1()), look.view.toPx(grain.p2()));
    const QRectF label = block.label.isInside ? block.label.box : QRectF();
    const auto hidden = partInside(line, block.number.united(label).adjusted(-5, -5, 5, 5));
    painter.setPen(cosmetic(look.colours.cutting, kHairlinePx));
    std::vector<QLineF> shown{line};
    if (hidden) {
        const QPointF gapStart = line.pointAt(hidden->first);
        const QPointF gapEnd = line.pointAt(hidden->second);
        shown.clear();
        if (hidden->first > 0) shown.emplace_back(line.p1(), gapStart);
        if (hidden->second < 1) shown.emplace_back(gapEnd, line.p2());
    }
    if (shown.empty()) return;
    for (const QLineF& part : shown) painter.drawLine(part);
    paintArrow(painter, shown.front().p1(), shown.back().p2());
    paintArrow(painter, shown.back().p2(), shown.front().p1());
}

void paintBlock(QPainter& painter, const TableLook& look, const ScenePanel& panel,
                const Block& block) {
    QFont font(look.font);
    if (block.numberPx > 0) {
        font.setPixelSize(block.numberPx);
        painter.setFont(font);
        painter.setPen(look.colours.paleNumber);
        painter.drawText(block.number, Qt::AlignCenter | Qt::TextDontClip, panel.number);
    }
    if (block.label.sizePx == 0) return;
    font.setPixelSize(block.label.sizePx);
    painter.setFont(font);
    painter.setPen(look.colours.text);
    painter.drawText(block.label.box, Qt::AlignHCenter | Qt::AlignTop | Qt::TextDontClip,
                     panel.label.join('\n'));
}

void paintTint(QPainter& painter, const TableLook& look, std::size_t index) {
    const ScenePanel& panel = look.scene.panels[index];
    painter.setPen(Qt::NoPen);
    const auto tint = panel.tint < 0 ? index : static_cast<std::size_t>(panel.tint);
    painter.setBrush(look.colours.tints[tint % look.colours.tints.size()]);
    painter.drawPath(panel.cutting.isEmpty() ? panel.sewing : panel.cutting);
    painter.setBrush(Qt::NoBrush);
}

void paintStrokes(QPainter& painter, const TableLook& look, bool areUnderPanels) {
    painter.save();
    painter.setTransform(look.view.transform(), true);
    painter.setBrush(Qt::NoBrush);
    for (const SceneStroke& stroke : look.scene.strokes) {
        if (stroke.isUnderPanels != areUnderPanels) continue;
        painter.setPen(penOf(look, stroke.pen));
        painter.drawPath(stroke.path);
    }
    painter.restore();
}

void paintOutlines(QPainter& painter, const TableLook& look, const ScenePanel& panel) {
    painter.setBrush(Qt::NoBrush);
    if (!panel.before.isEmpty()) {
        painter.setPen(cosmetic(look.colours.before, kHairlinePx));
        painter.drawPath(panel.before);
    }
    if (!panel.cutting.isEmpty()) {
        painter.setPen(cosmetic(look.colours.cutting, kHairlinePx));
        painter.drawPath(panel.cutting);
    }
    const QPen line = penOf(look, panel.pen);
    const bool hasFold = std::any_of(panel.edges.begin(), panel.edges.end(),
                                     [](const SceneEdge& edge) { return edge.isFold; });
    painter.setPen(line);
    // The dashes of an ink say whose line it is; they are not broken up again.
    if (!hasFold || panel.pen.ink == ScenePen::Ink::revision) {
        painter.drawPath(panel.sewing);
        return;
    }
    for (const SceneEdge& edge : panel.edges) {
        QPen pen(line);
        if (edge.isFold) pen.setStyle(Qt::DashDotLine);
        painter.setPen(pen);
        painter.drawPath(edge.path);
    }
}

void paintMarks(QPainter& painter, const TableLook& look, const ScenePanel& panel) {
    painter.setPen(cosmetic(look.colours.level, kHairlinePx));
    for (const QLineF& level : panel.levels) {
        painter.drawLine(look.view.toPx(level.p1()), look.view.toPx(level.p2()));
    }
    painter.setPen(cosmetic(penOf(look, panel.pen).color(), 1.25));
    for (const QLineF& notch : panel.notches) {
        painter.drawLine(look.view.toPx(notch.p1()), look.view.toPx(notch.p2()));
    }
}

}  // namespace

void paintPanels(QPainter& painter, const TableLook& look) {
    const QRectF seen = look.area.adjusted(-4, -4, 4, 4);
    const std::vector<LabelPlace> labels = labelPlaces(look);
    const auto isSeen = [&](std::size_t i) {
        return look.view.toPx(look.flat.panels[i].box).intersects(seen);
    };
    painter.save();
    painter.setTransform(look.view.transform(), true);
    for (std::size_t i = 0; i < look.scene.panels.size(); ++i) {
        if (isSeen(i)) paintTint(painter, look, i);
    }
    painter.restore();
    paintStrokes(painter, look, true);
    for (std::size_t i = 0; i < look.scene.panels.size(); ++i) {
        if (!isSeen(i)) continue;
        const ScenePanel& panel = look.scene.panels[i];
        painter.save();
        painter.setTransform(look.view.transform(), true);
        paintOutlines(painter, look, panel);
        painter.restore();
        const Block block = blockOf(panel, look, labels[i]);
        if (panel.grain) paintGrain(painter, look, *panel.grain, block);
        paintMarks(painter, look, panel);
        paintBlock(painter, look, panel, block);
    }
    paintStrokes(painter, look, false);
}

}  // namespace coutil
