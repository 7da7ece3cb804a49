#include "ui/projecting/projected_pieces.h"

#include <cmath>

#include "core/pattern/panel_key.h"
#include "ui/benches/tracing_scene.h"
#include "ui/canvas/painter_path.h"

namespace coutil {

namespace {

constexpr double kArrowMm = 8;
constexpr double kArrowHalfMm = 2.5;

void addLine(QPainterPath& path, const Point& a, const Point& b, const Placement& placement) {
    path.moveTo(painterPoint(placed(a, placement)));
    path.lineTo(painterPoint(placed(b, placement)));
}

void addArrow(QPainterPath& path, const QPointF& tip, const QPointF& from) {
    const QPointF along = tip - from;
    const double length = std::hypot(along.x(), along.y());
    if (length < 2 * kArrowMm) return;
    const QPointF u = along / length;
    const QPointF across(-u.y(), u.x());
    path.moveTo(tip - u * kArrowMm + across * kArrowHalfMm);
    path.lineTo(tip);
    path.lineTo(tip - u * kArrowMm - across * kArrowHalfMm);
}

QPainterPath grainPath(const Tracing& tracing, const Placement& placement) {
    QPainterPath grain;
    addLine(grain, tracing.grain[0], tracing.grain[1], placement);
    const QPointF lower = painterPoint(placed(tracing.grain[0], placement));
    const QPointF upper = painterPoint(placed(tracing.grain[1], placement));
    addArrow(grain, upper, lower);
    addArrow(grain, lower, upper);
    return grain;
}

QRectF roomAt(const Point& centre, double widthMm, double heightMm, const Placement& placement) {
    if (widthMm <= 0 || heightMm <= 0) return {};
    QRectF room(0, 0, widthMm, heightMm);
    room.moveCenter(painterPoint(placed(centre, placement)));
    return room;
}

ProjectedPiece projectedPiece(const Tracing& tracing, const Placement& placement) {
    ProjectedPiece piece;
    piece.name = QString::fromStdString(panelKey(tracing.panel, tracing.side));
    piece.words = cutWords(tracing).replace(QStringLiteral(", "), QStringLiteral("\n"));
    piece.cutting = painterPath(placed(tracing.cutting, placement), true);
    for (const Edge& edge : tracing.sewing) {
        const QPainterPath line = painterPath(placed(edge.path, placement));
        (edge.role == EdgeRole::fold ? piece.fold : piece.sewing).addPath(line);
    }
    for (const Notch& notch : tracing.notches) {
        addLine(piece.notches, notch.at, notch.at + notch.outward * notch.lengthMm, placement);
    }
    for (const LevelLine& level : tracing.levels) {
        addLine(piece.levels, level.front, level.back, placement);
    }
    piece.grain = grainPath(tracing, placement);
    piece.numberRoom =
        roomAt(tracing.numberAt, tracing.numberHeightMm, tracing.numberHeightMm, placement);
    piece.wordsRoom =
        roomAt(tracing.labelAt, tracing.labelWidthMm, tracing.labelHeightMm, placement);
    piece.box = piece.cutting.boundingRect().united(piece.sewing.boundingRect());
    return piece;
}

}  // namespace

std::vector<ProjectedPiece> projectedPieces(const std::vector<Tracing>& tracings) {
    const std::vector<Placement> placements = tracingPlacements(tracings);
    std::vector<ProjectedPiece> pieces;
    pieces.reserve(tracings.size());
    for (std::size_t i = 0; i < tracings.size(); ++i) {
        pieces.push_back(projectedPiece(tracings[i], placements[i]));
    }
    return pieces;
}

}  // namespace coutil
