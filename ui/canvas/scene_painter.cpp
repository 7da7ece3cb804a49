#include "ui/canvas/scene_painter.h"

#include <QPainter>

#include "ui/canvas/ruler.h"

namespace coutil {

namespace {

void paintSheets(QPainter& painter, const TableLook& look) {
    if (look.scene.sheets.empty()) return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);
    for (const SceneSheet& sheet : look.scene.sheets) {
        const QRectF frame = look.view.toPx(sheet.frame);
        if (!frame.intersects(look.area)) continue;
        QPen edge(look.colours.sheet, 1, Qt::DashLine);
        edge.setCosmetic(true);
        painter.setPen(edge);
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(frame);
    }
    painter.restore();
}

// On top of the panels: a name may stand inside one, where no line runs.
void paintSheetNames(QPainter& painter, const TableLook& look) {
    QFont font(look.font);
    painter.setPen(look.colours.text);
    for (const SceneSheet& sheet : look.scene.sheets) {
        const QRectF room = look.view.toPx(sheet.nameRoom);
        const int size = static_cast<int>(std::min(room.width() * 0.5, room.height() * 0.8));
        if (sheet.nameRoom.isEmpty() || size < 9) continue;
        font.setPixelSize(std::min(size, 40));
        painter.setFont(font);
        painter.drawText(room, Qt::AlignCenter, sheet.name);
    }
}

void paintDrawings(QPainter& painter, const TableLook& look) {
    for (const SceneDrawing& drawing : look.scene.drawings) {
        const QRectF place = look.view.toPx(drawing.place);
        if (!place.intersects(look.area)) continue;
        painter.save();
        painter.setClipRect(place.adjusted(-1, -1, 2, 2), Qt::IntersectClip);
        painter.translate(place.topLeft());
        painter.scale(look.view.pxPerMm(), look.view.pxPerMm());
        drawing.paint(painter);
        painter.restore();
    }
}

void paintCaption(QPainter& painter, const TableLook& look) {
    const QRectF inner = look.area.adjusted(kSideRulerPx + 12, kTopRulerPx + 8, -12, -12);
    painter.setFont(look.font);
    painter.setPen(look.colours.text);
    if (!look.scene.caption.isEmpty() && !look.scene.isEmpty()) {
        const QRectF box =
            painter.boundingRect(inner, Qt::AlignRight | Qt::AlignTop, look.scene.caption);
        painter.fillRect(box.adjusted(-4, -1, 4, 1), look.colours.paper);
        painter.drawText(inner, Qt::AlignRight | Qt::AlignTop, look.scene.caption);
    }
    if (look.scene.isEmpty()) {
        const double side = std::max(0.0, (inner.width() - 460) / 2);
        painter.drawText(inner.adjusted(side, 0, -side, 0), Qt::AlignCenter | Qt::TextWordWrap,
                         look.scene.emptyText);
    }
}

}  // namespace

void paintScene(QPainter& painter, const TableLook& look) {
    painter.fillRect(look.area, look.colours.paper);
    painter.setRenderHint(QPainter::Antialiasing);
    paintDrawings(painter, look);
    paintSheets(painter, look);
    paintPanels(painter, look);
    paintSheetNames(painter, look);
    paintLevels(painter, look);
    paintLetterings(painter, look);
    paintSigns(painter, look);
    paintLevelNames(painter, look);
    paintCaption(painter, look);
    paintLegend(painter, look);
    paintRulers(painter, look.area, look.view, look.scene.unit, look.scene.rulerZero, look.colours,
                look.font);
}

}  // namespace coutil
