#include "ui/canvas/flat_scene.h"

#include <QTransform>
#include <algorithm>
#include <cmath>
#include <limits>

namespace coutil {

namespace {

// Qt flattens to about a quarter of a unit; on a finer grid that is far below a pixel at any zoom.
constexpr double kFinerGrid = 16;

QPolygonF flattenedPath(const QPainterPath& path) {
    if (path.isEmpty()) return {};
    const auto parts = path.toSubpathPolygons(QTransform::fromScale(kFinerGrid, kFinerGrid));
    QPolygonF points;
    for (const QPolygonF& part : parts) {
        for (const QPointF& point : part) points << point / kFinerGrid;
    }
    return points;
}

FlatLine flatLine(const QPainterPath& path) {
    FlatLine line{flattenedPath(path), {}};
    line.box = line.points.boundingRect();
    return line;
}

double squaredDistance(const QPointF& p, const QPointF& a, const QPointF& b) {
    const QPointF ab = b - a;
    const double length = QPointF::dotProduct(ab, ab);
    const double t =
        length > 0 ? std::clamp(QPointF::dotProduct(p - a, ab) / length, 0.0, 1.0) : 0.0;
    const QPointF off = p - (a + t * ab);
    return QPointF::dotProduct(off, off);
}

double distanceTo(const FlatLine& line, const QPointF& mm, double reachMm) {
    double best = std::numeric_limits<double>::infinity();
    if (!line.box.adjusted(-reachMm, -reachMm, reachMm, reachMm).contains(mm)) return best;
    for (qsizetype i = 1; i < line.points.size(); ++i) {
        best = std::min(best, squaredDistance(mm, line.points[i - 1], line.points[i]));
    }
    return std::sqrt(best);
}

// One step of Liang and Barsky's clipping: false once nothing of the segment is left.
bool clip(double p, double q, double& from, double& to) {
    if (p == 0) return q >= 0;
    const double t = q / p;
    if (p < 0) {
        from = std::max(from, t);
    } else {
        to = std::min(to, t);
    }
    return from <= to;
}

bool meetsBox(const QPointF& a, const QPointF& b, const QRectF& box) {
    const QPointF d = b - a;
    double from = 0;
    double to = 1;
    return clip(-d.x(), a.x() - box.left(), from, to) &&
           clip(d.x(), box.right() - a.x(), from, to) &&
           clip(-d.y(), a.y() - box.top(), from, to) && clip(d.y(), box.bottom() - a.y(), from, to);
}

bool crosses(const QPolygonF& points, const QRectF& box) {
    for (qsizetype i = 1; i < points.size(); ++i) {
        if (meetsBox(points[i - 1], points[i], box)) return true;
    }
    return false;
}

// Nearest edge within reach, if any.
TablePlace edgeUnder(const FlatScene& flat, const QPointF& mm, double reachMm) {
    TablePlace place;
    double best = reachMm;
    for (std::size_t p = 0; p < flat.panels.size(); ++p) {
        const auto& edges = flat.panels[p].edges;
        for (std::size_t e = 0; e < edges.size(); ++e) {
            const double distance = distanceTo(edges[e], mm, best);
            if (distance > best) continue;
            best = distance;
            place = {TablePlace::Kind::edge, static_cast<int>(p), static_cast<int>(e), -1, -1};
        }
    }
    return place;
}

}  // namespace

FlatScene flattenedScene(const TableScene& scene) {
    FlatScene flat;
    for (const SceneStroke& stroke : scene.strokes) {
        flat.strokes.push_back(flatLine(stroke.path));
    }
    flat.panels.reserve(scene.panels.size());
    for (const ScenePanel& panel : scene.panels) {
        FlatPanel& made = flat.panels.emplace_back();
        made.outline = flattenedPath(panel.cutting.isEmpty() ? panel.sewing : panel.cutting);
        made.box = made.outline.boundingRect();
        for (const SceneEdge& edge : panel.edges) {
            made.edges.push_back(flatLine(edge.path));
        }
    }
    return flat;
}

TablePlace placeUnder(const TableScene& scene, const FlatScene& flat, const TableView& view,
                      const QPointF& px, double reachPx) {
    const QPointF mm = view.toMm(px);
    const double reachMm = reachPx / view.pxPerMm();
    TablePlace place;
    if (scene.sheets.empty()) {
        place = edgeUnder(flat, mm, reachMm);
        if (place.kind != TablePlace::Kind::nothing) return place;
        for (std::size_t l = 0; l < scene.levels.size(); ++l) {
            if (std::abs(scene.levels[l].yMm - mm.y()) > reachMm / 2) continue;
            return {TablePlace::Kind::level, -1, -1, static_cast<int>(l), -1};
        }
        for (std::size_t p = 0; p < flat.panels.size(); ++p) {
            if (!flat.panels[p].box.contains(mm)) continue;
            if (!flat.panels[p].outline.containsPoint(mm, Qt::WindingFill)) continue;
            return {TablePlace::Kind::panel, static_cast<int>(p), -1, -1, -1};
        }
    }
    for (std::size_t s = 0; s < scene.sheets.size(); ++s) {
        if (scene.sheets[s].frame.contains(mm)) {
            return {TablePlace::Kind::sheet, -1, -1, -1, static_cast<int>(s)};
        }
    }
    return place;
}

bool isCrossed(const TableScene& scene, const FlatScene& flat, const TableView& view,
               const QRectF& px) {
    const QRectF mm = QRectF(view.toMm(px.topLeft()), view.toMm(px.bottomRight())).normalized();
    for (const SceneLevel& level : scene.levels) {
        if (level.yMm >= mm.top() && level.yMm <= mm.bottom()) return true;
    }
    const auto runsThrough = [&](const FlatLine& line) {
        return line.box.adjusted(-1e-6, -1e-6, 1e-6, 1e-6).intersects(mm) &&
               crosses(line.points, mm);
    };
    for (const FlatPanel& panel : flat.panels) {
        if (!panel.box.intersects(mm)) continue;
        if (crosses(panel.outline, mm)) return true;
        if (std::ranges::any_of(panel.edges, runsThrough)) return true;
    }
    return std::ranges::any_of(flat.strokes, runsThrough);
}

}  // namespace coutil
