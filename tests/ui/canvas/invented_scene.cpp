#include "tests/ui/canvas/invented_scene.h"

namespace coutil {

namespace {

constexpr double kFoot = -120;
constexpr double kHead = 200;
constexpr double kWide = 80;
constexpr double kStep = 104;

QPainterPath straight(const QPointF& a, const QPointF& b) {
    QPainterPath path(a);
    path.lineTo(b);
    return path;
}

SceneEdge edge(const QString& name, const QPainterPath& path) {
    SceneEdge made;
    made.name = name;
    made.figures = name + "\nfigures of " + name;
    made.path = path;
    return made;
}

ScenePanel panel(int index, int count) {
    const double left = index * kStep;
    const double right = left + kWide;
    ScenePanel made;
    made.number = QString::number(index + 1);
    made.figures = "figures of panel " + made.number;
    made.edges = {
        edge("bottom", straight({left, kFoot}, {right, kFoot})),
        edge(QString("seam %1-%2").arg(index + 1).arg(index + 2), hollowedEdge(right, -10)),
        edge("top", straight({right, kHead}, {left, kHead})),
        edge(QString("seam %1-%2").arg(index).arg(index + 1), hollowedEdge(left, 10))};
    if (index + 1 < count) made.edges[1].partner = SceneEdgeRef{index + 1, 3};
    if (index > 0) made.edges[3].partner = SceneEdgeRef{index - 1, 1};
    made.sewing = made.edges[0].path;
    made.sewing.connectPath(made.edges[1].path);
    made.sewing.connectPath(made.edges[2].path);
    made.sewing.connectPath(made.edges[3].path.toReversed());
    made.sewing.closeSubpath();
    made.grain = QLineF(left + kWide / 2, -100, left + kWide / 2, 160);
    made.numberRoom = QRectF(left + 12, 10, kWide - 24, 130);
    made.notches = {QLineF(left + 10, 0, left + 4, 0), QLineF(right - 10, 0, right - 4, 0)};
    return made;
}

}  // namespace

QPainterPath hollowedEdge(double x, double hollowMm) {
    QPainterPath path({x, kFoot});
    path.cubicTo(QPointF(x, -60), QPointF(x + hollowMm, -60), QPointF(x + hollowMm, 0));
    path.cubicTo(QPointF(x + hollowMm, 80), QPointF(x, 100), QPointF(x, kHead));
    return path;
}

TableScene inventedScene(int count) {
    TableScene scene;
    for (int i = 0; i < count; ++i) scene.panels.push_back(panel(i, count));
    scene.levels = {{"bust", "bust\nfigures of bust", 150},
                    {"waist", "waist\nfigures of waist", 0},
                    {"high hip", "high hip\nfigures of high hip", -90}};
    for (int i = 0; i + 1 < count; ++i) {
        const double x = i * kStep + kWide + (kStep - kWide) / 2;
        scene.letterings.push_back({QString("%1-%2").arg(i + 1).arg(i + 2), {{x, -132}, {x, 212}}});
    }
    scene.caption = "pencil";
    return scene;
}

}  // namespace coutil
