#pragma once

#include <QPolygonF>
#include <QRectF>
#include <vector>

#include "ui/canvas/table_scene.h"
#include "ui/canvas/table_view.h"

namespace coutil {

// The lines of a scene as chains of points in mm, made once per scene: for finding what is under
// the pointer and for keeping letters off the lines. Chord error below 0.02 mm.
struct FlatLine {
    QPolygonF points;
    QRectF box;
};

struct FlatPanel {
    QPolygonF outline;  // sewing line, or cutting line where there is one
    QRectF box;
    std::vector<FlatLine> edges;
};

struct FlatScene {
    std::vector<FlatPanel> panels;
    std::vector<FlatLine> strokes;
};

[[nodiscard]] FlatScene flattenedScene(const TableScene& scene);

// What lies under a place of the screen: the nearest edge within reachPx, else a level within
// half of that, else the panel or, in a scene with sheets, the sheet around it.
[[nodiscard]] TablePlace placeUnder(const TableScene& scene, const FlatScene& flat,
                                    const TableView& view, const QPointF& px, double reachPx);

// True where a line of the scene runs through the rectangle (px).
[[nodiscard]] bool isCrossed(const TableScene& scene, const FlatScene& flat, const TableView& view,
                             const QRectF& px);

}  // namespace coutil
