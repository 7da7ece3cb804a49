#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>

#include "ui/canvas/ruler.h"
#include "ui/canvas/scene_painter.h"

namespace coutil {

namespace {

void paintHalo(QPainter& painter, const TableLook& look, const QPainterPath& path,
               const QColor& colour, double widthPx) {
    painter.save();
    painter.setTransform(look.view.transform(), true);
    QColor soft(colour);
    soft.setAlpha(70);
    QPen pen(soft, widthPx, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
    pen.setCosmetic(true);
    painter.setBrush(Qt::NoBrush);
    painter.strokePath(path, pen);
    pen.setColor(colour);
    pen.setWidthF(1.4);
    painter.strokePath(path, pen);
    painter.restore();
}

const SceneEdge* edgeAt(const TableScene& scene, const SceneEdgeRef& ref) {
    const auto p = static_cast<std::size_t>(ref.panel);
    const auto e = static_cast<std::size_t>(ref.edge);
    if (p >= scene.panels.size() || e >= scene.panels[p].edges.size()) return nullptr;
    return &scene.panels[p].edges[e];
}

// Both edges of a seam light up: they are one line on the body.
void paintEdgeHalo(QPainter& painter, const TableLook& look, const SceneEdgeRef& ref) {
    const SceneEdge* edge = edgeAt(look.scene, ref);
    if (edge == nullptr) return;
    paintHalo(painter, look, edge->path, look.colours.halo, 7);
    if (!edge->partner) return;
    if (const SceneEdge* other = edgeAt(look.scene, *edge->partner)) {
        paintHalo(painter, look, other->path, look.colours.halo, 7);
    }
}

void paintPlace(QPainter& painter, const TableLook& look, const TablePlace& place) {
    const auto l = static_cast<std::size_t>(place.level);
    const auto s = static_cast<std::size_t>(place.sheet);
    if (place.kind == TablePlace::Kind::edge) {
        paintEdgeHalo(painter, look, {place.panel, place.edge});
    } else if (place.kind == TablePlace::Kind::level && l < look.scene.levels.size()) {
        const double y = look.view.toPx(QPointF(0, look.scene.levels[l].yMm)).y();
        QColor soft(look.colours.halo);
        soft.setAlpha(70);
        painter.fillRect(QRectF(look.area.left() + kSideRulerPx, y - 2.5, look.area.width(), 5.5),
                         soft);
    } else if (place.kind == TablePlace::Kind::sheet && s < look.scene.sheets.size()) {
        QColor soft(look.colours.halo);
        soft.setAlpha(28);
        const QRectF frame = look.view.toPx(look.scene.sheets[s].frame);
        painter.fillRect(frame, soft);
        painter.setPen(QPen(look.colours.halo, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(frame);
    }
}

void paintPickedPanel(QPainter& painter, const TableLook& look, int index) {
    const auto p = static_cast<std::size_t>(index);
    if (p >= look.scene.panels.size()) return;
    const ScenePanel& panel = look.scene.panels[p];
    paintHalo(painter, look, panel.cutting.isEmpty() ? panel.sewing : panel.cutting,
              look.colours.halo, 8);
}

void paintProblem(QPainter& painter, const TableLook& look, const TableHighlights& highlights) {
    const auto p = static_cast<std::size_t>(highlights.problemPanel);
    if (p < look.scene.panels.size()) {
        paintHalo(painter, look, look.scene.panels[p].sewing, look.colours.problem, 8);
    }
    if (!highlights.problemAtMm) return;
    const QPointF middle = look.view.toPx(*highlights.problemAtMm);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(look.colours.paper, 6));
    painter.drawEllipse(middle, 16, 16);
    painter.setPen(QPen(look.colours.problem, 3));
    painter.drawEllipse(middle, 16, 16);
}

void paintPlate(QPainter& painter, const TableLook& look, const TableHighlights& highlights) {
    if (highlights.plate.isEmpty()) return;
    painter.setFont(look.font);
    const QFontMetricsF metrics(look.font);
    const QRectF text =
        metrics.boundingRect(QRectF(0, 0, 420, 400), Qt::AlignLeft, highlights.plate);
    QRectF box(highlights.platePx + QPointF(18, 18), text.size() + QSizeF(16, 10));
    if (box.right() > look.area.right() - 4) box.moveRight(highlights.platePx.x() - 14);
    if (box.bottom() > look.area.bottom() - 4) box.moveBottom(highlights.platePx.y() - 14);
    painter.setPen(QPen(look.colours.sheet, 1));
    painter.setBrush(look.colours.ruler);
    painter.drawRoundedRect(box, 3, 3);
    painter.setPen(look.colours.text);
    painter.drawText(box.adjusted(8, 5, -8, -5), Qt::AlignLeft, highlights.plate);
}

}  // namespace

void paintHighlights(QPainter& painter, const TableLook& look, const TableHighlights& highlights) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setClipRect(look.area.adjusted(kSideRulerPx, kTopRulerPx, 0, 0));
    const bool isEdgePicked = highlights.picked.kind == TablePlace::Kind::edge;
    if (highlights.picked.panel >= 0) paintPickedPanel(painter, look, highlights.picked.panel);
    if (isEdgePicked || highlights.picked.kind == TablePlace::Kind::sheet) {
        paintPlace(painter, look, highlights.picked);
    }
    paintPlace(painter, look, highlights.pointed);
    paintProblem(painter, look, highlights);
    paintHandles(painter, look, highlights.handle);
    paintPlate(painter, look, highlights);
    painter.restore();
}

}  // namespace coutil
