#include "ui/projecting/projector_painter.h"

#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace coutil {

namespace {

constexpr double kThinShare = 0.6;  // of marks against outlines
constexpr int kMostGridLines = 400;

QPen cosmeticPen(const QColor& colour, double widthPx) {
    QPen pen(colour, widthPx, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin);
    pen.setCosmetic(true);
    return pen;
}

QPen dashed(QPen pen, const QList<qreal>& lengthsPx) {
    QList<qreal> inWidths;
    for (const qreal length : lengthsPx) inWidths << length / pen.widthF();
    pen.setDashPattern(inWidths);
    return pen;
}

// The grid lies still on the table, whatever the drawing does on it.
void paintGrid(QPainter& painter, const QSizeF& screenPx, const ProjectedScene& scene) {
    painter.setPen(cosmeticPen(projectedQuiet(scene.look), 1));
    const QPointF middle(screenPx.width() / 2, screenPx.height() / 2);
    const QSizeF step = squarePx(scene.calibration, scene.gridMm);
    const auto linesTo = [](double half, double stepPx) {
        return std::min(kMostGridLines, static_cast<int>(std::floor(half / stepPx)));
    };
    const int across = linesTo(middle.x(), step.width());
    for (int i = -across; i <= across; ++i) {
        const double x = middle.x() + i * step.width();
        painter.drawLine(QPointF(x, 0), QPointF(x, screenPx.height()));
    }
    const int up = linesTo(middle.y(), step.height());
    for (int i = -up; i <= up; ++i) {
        const double y = middle.y() + i * step.height();
        painter.drawLine(QPointF(0, y), QPointF(screenPx.width(), y));
    }
}

void paintLines(QPainter& painter, const ProjectedPiece& piece, const ProjectorLook& look) {
    const QColor line = projectedLine(look);
    const double thin = std::max(1.0, look.lineWidthPx * kThinShare);
    painter.setPen(cosmeticPen(projectedQuiet(look), 1));
    painter.drawPath(piece.levels);
    painter.setPen(cosmeticPen(line, thin));
    painter.drawPath(piece.grain);
    painter.setPen(cosmeticPen(line, look.lineWidthPx));
    painter.drawPath(piece.notches);
    if (look.lines != ProjectedLines::sewingOnly) painter.drawPath(piece.cutting);
    const double dash = std::max(8.0, 4 * look.lineWidthPx);
    painter.setPen(dashed(cosmeticPen(line, look.lineWidthPx),
                          {dash * 1.6, dash * 0.6, dash * 0.3, dash * 0.6}));
    painter.drawPath(piece.fold);
    if (look.lines == ProjectedLines::cuttingOnly) return;
    painter.setPen(look.lines == ProjectedLines::sewingOnly
                       ? cosmeticPen(line, look.lineWidthPx)
                       : dashed(cosmeticPen(line, thin), {dash, dash * 0.6}));
    painter.drawPath(piece.sewing);
}

// Words turn with their piece, but never stand mirrored or on their head.
void paintWords(QPainter& painter, const QString& words, const QRectF& room,
                const QTransform& toScreen, const ProjectedScene& scene) {
    if (room.isEmpty() || words.isEmpty()) return;
    const bool isOnItsHead = std::abs(scene.view.turnDeg) > 90;
    const double turnDeg = scene.view.turnDeg + (isOnItsHead ? 180 : 0);
    painter.save();
    QTransform place;
    const QPointF middle = toScreen.map(room.center());
    place.translate(middle.x(), middle.y());
    place.scale(scene.calibration.acrossPxPerMm, scene.calibration.upPxPerMm);
    place.rotate(-turnDeg);
    painter.setTransform(place, true);
    // Letters of fractional size in mm: set in large units and scaled down.
    constexpr int kLetterUnits = 100;
    QFont font = painter.font();
    font.setPixelSize(kLetterUnits);
    const QRectF box = QFontMetricsF(font).boundingRect(QRectF(), Qt::AlignCenter, words);
    const double scale = std::min(room.width() / box.width(), room.height() / box.height()) * 0.9;
    painter.scale(scale, scale);
    painter.setFont(font);
    painter.drawText(QRectF(-box.width(), -box.height(), 2 * box.width(), 2 * box.height()),
                     Qt::AlignCenter, words);
    painter.restore();
}

}  // namespace

QColor projectedGround(const ProjectorLook& look) {
    return look.isLightOnBlack ? QColor(Qt::black) : QColor(Qt::white);
}

QColor projectedLine(const ProjectorLook& look) {
    return look.isLightOnBlack ? QColor(Qt::white) : QColor(Qt::black);
}

QColor projectedQuiet(const ProjectorLook& look) {
    return look.isLightOnBlack ? QColor(0x9A, 0x9A, 0x9A) : QColor(0x6A, 0x6A, 0x6A);
}

void paintProjected(QPainter& painter, const QSizeF& screenPx, const ProjectedScene& scene) {
    painter.fillRect(QRectF(QPointF(), screenPx), projectedGround(scene.look));
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    if (scene.look.hasGrid) paintGrid(painter, screenPx, scene);
    const QTransform toScreen = projection(scene.view, scene.calibration, screenPx);
    for (std::size_t i = 0; i < scene.pieces.size(); ++i) {
        if (scene.only >= 0 && static_cast<std::size_t>(scene.only) != i) continue;
        const ProjectedPiece& piece = scene.pieces[i];
        painter.save();
        painter.setTransform(toScreen, true);
        paintLines(painter, piece, scene.look);
        painter.restore();
        painter.setPen(projectedQuiet(scene.look));
        paintWords(painter, piece.name, piece.numberRoom, toScreen, scene);
        paintWords(painter, piece.words, piece.wordsRoom, toScreen, scene);
    }
}

}  // namespace coutil
