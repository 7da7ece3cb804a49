#include "ui/benches/tracing_scene.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "ui/benches/free_room.h"
#include "ui/canvas/painter_path.h"
#include "ui/words/trade_words.h"

namespace coutil {

namespace {

constexpr double kBetweenTracingsMm = 28;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(TracingScene)
};

QLineF placedLine(const Point& a, const Point& b, const Placement& placement) {
    return {painterPoint(placed(a, placement)), painterPoint(placed(b, placement))};
}

constexpr double kNumberPart = 0.62;  // of the free room; the rest is for the label

// Number above label in the roomiest place of the panel. Both stay level on a turned tracing:
// turned by quarters the room turns along, else what fits inside however it is turned.
void placeBlock(ScenePanel& made, const Tracing& tracing, const Path& outline,
                const Placement& placement) {
    std::vector<double> heights;
    for (const LevelLine& level : tracing.levels) heights.push_back(level.front.y());
    const QRectF room = freeRoom(outline, heights);
    if (room.isNull()) return;
    const QPointF middle =
        painterPoint(placed(Point(room.center().x(), room.center().y()), placement));
    QSizeF size = room.size();
    const double quarters = placement.turnRad / (std::numbers::pi / 2);
    if (std::abs(quarters - std::round(quarters)) > 1e-6) {
        const double side = std::min(size.width(), size.height()) / std::numbers::sqrt2;
        size = QSizeF(side, side);
    } else if (std::llround(quarters) % 2 != 0) {
        size.transpose();
    }
    const QRectF whole(middle - QPointF(size.width(), size.height()) / 2, size);
    // y runs up: the number is the upper part of the room, the rectangle's bottom.
    made.numberRoom = whole.adjusted(0, whole.height() * (1 - kNumberPart), 0, 0);
    made.labelRoom = whole.adjusted(0, 0, 0, -whole.height() * kNumberPart);
}

QString edgeWords(const Tracing& tracing, std::size_t edge, LengthUnit unit) {
    const QString allowance = edge < tracing.allowancesMm.size()
                                  ? lengthText(tracing.allowancesMm[edge], unit)
                                  : QString();
    return Words::tr("%1 of panel %2\nsewing line: %3\nallowance: %4")
        .arg(edgeName(tracing.sewing[edge].name), QString::fromStdString(tracing.panel),
             lengthText(lengthMm(tracing.sewing[edge].path), unit), allowance);
}

}  // namespace

QString cutWords(const Tracing& tracing) {
    if (tracing.isOnFold) return Words::tr("cut %1 on the fold").arg(tracing.cutCount);
    if (tracing.isMirroredPair) {
        return tracing.cutCount == 2 ? Words::tr("cut 2, one mirrored")
                                     : Words::tr("cut %1, half mirrored").arg(tracing.cutCount);
    }
    return Words::tr("cut %1").arg(tracing.cutCount);
}

ScenePanel tracingPanel(const Tracing& tracing, const Placement& placement, LengthUnit unit) {
    ScenePanel made;
    made.number = QString::fromStdString(tracing.panel);
    QStringList told{cutWords(tracing)};
    Path outline;
    for (std::size_t e = 0; e < tracing.sewing.size(); ++e) {
        const Edge& edge = tracing.sewing[e];
        SceneEdge& line = made.edges.emplace_back();
        line.name = edgeName(edge.name);
        line.figures = edgeWords(tracing, e, unit);
        line.path = painterPath(placed(edge.path, placement));
        line.isFold = edge.role == EdgeRole::fold;
        outline = outline.isEmpty() ? edge.path : joined(outline, edge.path);
        if (e < tracing.allowancesMm.size()) {
            told << Words::tr("%1 %2").arg(line.name, lengthText(tracing.allowancesMm[e], unit));
        }
    }
    made.figures = told.join(QStringLiteral(", "));
    made.sewing = painterPath(placed(outline, placement), true);
    made.cutting = painterPath(placed(tracing.cutting, placement), true);
    for (const Notch& notch : tracing.notches) {
        made.notches.push_back(
            placedLine(notch.at, notch.at + notch.outward * notch.lengthMm, placement));
    }
    for (const LevelLine& level : tracing.levels) {
        made.levels.push_back(placedLine(level.front, level.back, placement));
    }
    made.grain = placedLine(tracing.grain[0], tracing.grain[1], placement);
    placeBlock(made, tracing, outline, placement);
    return made;
}

std::vector<Placement> tracingPlacements(const std::vector<Tracing>& tracings) {
    std::vector<Placement> placements;
    double x = 0;
    for (const Tracing& tracing : tracings) {
        const Box box = boundsOf(tracing.cutting);
        Placement placement;
        placement.shift = Vector(x - box.lowest.x(), 0);
        placements.push_back(placement);
        x += box.widthMm() + kBetweenTracingsMm;
    }
    return placements;
}

TableScene tracingScene(const std::vector<Tracing>& tracings, LengthUnit unit) {
    TableScene scene;
    scene.unit = unit;
    const std::vector<Placement> placements = tracingPlacements(tracings);
    for (std::size_t i = 0; i < tracings.size(); ++i) {
        ScenePanel panel = tracingPanel(tracings[i], placements[i], unit);
        panel.label = cutWords(tracings[i]).split(QStringLiteral(", "));
        scene.panels.push_back(std::move(panel));
    }
    return scene;
}

}  // namespace coutil
