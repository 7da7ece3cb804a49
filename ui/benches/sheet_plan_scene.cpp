#include "ui/benches/sheet_plan_scene.h"

#include <QPainter>
#include <QPen>
#include <algorithm>
#include <memory>

#include "ui/benches/tracing_scene.h"
#include "ui/printing/sheet_painter.h"

namespace coutil {

namespace {

constexpr double kNameWidthMm = 46;
constexpr double kNameHeightMm = 26;
constexpr double kSearchFlatnessMm = 0.5;
constexpr int kPlacesASide = 13;

QRectF rectOf(const Box& box) {
    return {box.lowest.x(), box.lowest.y(), box.widthMm(), box.heightMm()};
}

using Chains = std::vector<std::vector<Point>>;

// What a sheet's name must keep off: lines as dense points, and the numbers of the pieces.
struct Obstacles {
    Chains chains;
    std::vector<QRectF> numbers;
};

// Points lie closer together than a name is high, so no line slips through between them.
bool isFree(const QRectF& room, const Obstacles& obstacles) {
    const auto isInRoom = [&](const Point& p) { return room.contains(QPointF(p.x(), p.y())); };
    const auto runsThrough = [&](const std::vector<Point>& chain) {
        return std::any_of(chain.begin(), chain.end(), isInRoom);
    };
    const auto covers = [&](const QRectF& number) { return number.intersects(room); };
    return std::none_of(obstacles.chains.begin(), obstacles.chains.end(), runsThrough) &&
           std::none_of(obstacles.numbers.begin(), obstacles.numbers.end(), covers);
}

// Flattened, with points added on long straight stretches.
std::vector<Point> densePoints(const Path& path) {
    std::vector<Point> dense;
    for (const Point& point : flattened(path, kSearchFlatnessMm)) {
        if (!dense.empty()) {
            const Point from = dense.back();
            const int parts = static_cast<int>((point - from).norm() / (kNameHeightMm / 4));
            for (int i = 1; i <= parts; ++i) {
                dense.emplace_back(from + (point - from) * (double(i) / (parts + 1)));
            }
        }
        dense.push_back(point);
    }
    return dense;
}

// A place of this size in the frame that is free of lines, as near the middle as may be; null where
// there is none.
QRectF freePlace(const QRectF& frame, const Obstacles& obstacles, const QSizeF& size) {
    QRectF best;
    double bestDistance = 1e300;
    for (int i = 0; i < kPlacesASide; ++i) {
        for (int j = 0; j < kPlacesASide; ++j) {
            const double fx = 0.12 + 0.76 * i / (kPlacesASide - 1);
            const double fy = 0.12 + 0.76 * j / (kPlacesASide - 1);
            QRectF room(QPointF(), size);
            room.moveCenter({frame.left() + fx * frame.width(), frame.top() + fy * frame.height()});
            const QPointF off = room.center() - frame.center();
            const double distance = QPointF::dotProduct(off, off);
            if (distance >= bestDistance || !frame.contains(room) || !isFree(room, obstacles))
                continue;
            best = room;
            bestDistance = distance;
        }
    }
    return best;
}

QRectF nameRoom(const QRectF& frame, const Obstacles& obstacles) {
    const QSizeF large(kNameWidthMm, kNameHeightMm);
    const QRectF room = freePlace(frame, obstacles, large);
    return room.isNull() ? freePlace(frame, obstacles, large / 2) : room;
}

}  // namespace

TableScene sheetPlanScene(const SheetPlan& plan, const std::vector<Tracing>& tracings,
                          LengthUnit unit) {
    TableScene scene;
    scene.unit = unit;
    Obstacles obstacles;
    for (const PlacedTracing& piece : plan.placed) {
        const Tracing& tracing = tracings.at(piece.tracing);
        ScenePanel panel = tracingPanel(tracing, piece.placement, unit);
        panel.levels.clear();
        obstacles.numbers.push_back(panel.numberRoom);
        scene.panels.push_back(std::move(panel));
        obstacles.chains.push_back(densePoints(placed(tracing.cutting, piece.placement)));
        for (const Edge& edge : tracing.sewing) {
            obstacles.chains.push_back(densePoints(placed(edge.path, piece.placement)));
        }
        obstacles.chains.push_back(
            densePoints(placed(straightPath(tracing.grain[0], tracing.grain[1]), piece.placement)));
    }
    for (const Sheet& sheet : plan.sheets) {
        const QRectF frame = rectOf(frameOf(plan, sheet));
        scene.sheets.push_back(
            {QString::fromStdString(nameOf(sheet)), frame, nameRoom(frame, obstacles)});
    }
    return scene;
}

TableScene sheetPageScene(const SheetDrawing& page, LengthUnit unit) {
    TableScene scene;
    scene.unit = unit;
    scene.isPencil = false;
    const auto drawing = std::make_shared<const SheetDrawing>(page);
    const QRectF paper(0, 0, page.widthMm, page.heightMm);
    scene.drawings.push_back({paper, [drawing, paper](QPainter& painter) {
                                  QPen edge(Qt::gray, 1);
                                  edge.setCosmetic(true);
                                  painter.setPen(edge);
                                  painter.setBrush(Qt::white);  // paper is white in every theme
                                  painter.drawRect(paper);
                                  paintSheet(painter, *drawing);
                              }});
    return scene;
}

}  // namespace coutil
