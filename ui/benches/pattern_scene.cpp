#include "ui/benches/pattern_scene.h"

#include <algorithm>
#include <cmath>

#include "ui/benches/free_room.h"
#include "ui/canvas/painter_path.h"
#include "ui/words/trade_words.h"

namespace coutil {

namespace {

constexpr double kWaistTickMm = 5;
constexpr double kNameOffMm = 12;

// Short ticks inwards at the waist marks of both seams.
void addWaistMarks(ScenePanel& made, const Panel& panel, const Placement& placement) {
    for (const Edge& edge : panel.edges) {
        const auto mark = pointAtSeamPosition(edge, 0);
        if (!mark) continue;
        const Vector inwards(edge.runsUp ? -kWaistTickMm : kWaistTickMm, 0);
        made.notches.emplace_back(painterPoint(placed(*mark, placement)),
                                  painterPoint(placed(Point(*mark + inwards), placement)));
    }
}

ScenePanel scenePanel(const Pattern& pattern, std::size_t index, const Placement& placement,
                      LengthUnit unit) {
    const Panel& panel = pattern.panels[index];
    ScenePanel made;
    made.number = QString::fromStdString(panel.name);
    made.figures = panelFigures(panel, unit);
    for (std::size_t e = 0; e < panel.edges.size(); ++e) {
        const Edge& edge = panel.edges[e];
        SceneEdge& line = made.edges.emplace_back();
        line.name = edgeName(edge.name);
        line.figures = edgeFigures(pattern, {index, e}, unit);
        line.path = painterPath(placed(edge.path, placement));
        line.isFold = edge.role == EdgeRole::fold;
    }
    made.sewing = painterPath(placed(outlineOf(panel), placement), true);
    made.grain = QLineF(painterPoint(placed(panel.grain[0], placement)),
                        painterPoint(placed(panel.grain[1], placement)));
    addWaistMarks(made, panel, placement);
    std::vector<double> heights;
    for (const LevelLine& level : panel.levels) heights.push_back(level.front.y());
    made.numberRoom =
        freeRoom(outlineOf(panel), heights).translated(placement.shift.x(), placement.shift.y());
    return made;
}

// Between the lower ends of a seam's two edges, else above the upper ones, else beside the seam.
SceneLettering seamLettering(const Seam& seam, const QPainterPath& front,
                             const QPainterPath& back) {
    const auto ends = [](const QPainterPath& path, bool isUpper) {
        const QPointF a = path.pointAtPercent(0);
        const QPointF b = path.pointAtPercent(1);
        return (a.y() > b.y()) == isUpper ? a : b;
    };
    SceneLettering made;
    made.text = QString::fromStdString(seam.name);
    const QPointF lowFront = ends(front, false);
    const QPointF lowBack = ends(back, false);
    const QPointF highFront = ends(front, true);
    const QPointF highBack = ends(back, true);
    made.places = {
        {(lowFront.x() + lowBack.x()) / 2, std::min(lowFront.y(), lowBack.y()) - kNameOffMm},
        {(highFront.x() + highBack.x()) / 2, std::max(highFront.y(), highBack.y()) + kNameOffMm}};
    for (const double part : {0.35, 0.65, 0.2, 0.8}) {
        const QPointF a = front.pointAtPercent(part);
        const QPointF b = back.pointAtPercent(1 - part);
        made.places.emplace_back((a + b) / 2);
    }
    return made;
}

SceneEdgeRef sceneRef(const EdgeRef& ref) {
    return {static_cast<int>(ref.panel), static_cast<int>(ref.edge)};
}

}  // namespace

TableScene patternScene(const Pattern& pattern, LengthUnit unit) {
    TableScene scene;
    scene.unit = unit;
    const std::vector<Placement> placements = masterPlacements(pattern, kSpaceBetweenPanelsMm);
    for (std::size_t i = 0; i < pattern.panels.size(); ++i) {
        scene.panels.push_back(scenePanel(pattern, i, placements[i], unit));
    }
    for (const Seam& seam : pattern.seams) {
        SceneEdge& front = scene.panels[seam.front.panel].edges[seam.front.edge];
        SceneEdge& back = scene.panels[seam.back.panel].edges[seam.back.edge];
        front.partner = sceneRef(seam.back);
        back.partner = sceneRef(seam.front);
        scene.letterings.push_back(seamLettering(seam, front.path, back.path));
    }
    const double waistY = placements.empty() ? 0 : placements.front().shift.y();
    for (const Level& level : pattern.levels) {
        scene.levels.push_back(
            {levelName(level.name), levelFigures(level, unit), level.heightMm + waistY});
    }
    return scene;
}

ProblemSpot spotOf(const Problem& problem, const Pattern& pattern) {
    ProblemSpot spot;
    const auto found = std::find_if(pattern.panels.begin(), pattern.panels.end(),
                                    [&](const Panel& p) { return p.name == problem.panel; });
    if (found == pattern.panels.end()) return spot;
    const auto index = static_cast<std::size_t>(found - pattern.panels.begin());
    spot.panel = static_cast<int>(index);
    if (problem.at) {
        spot.atMm = painterPoint(
            placed(*problem.at, masterPlacements(pattern, kSpaceBetweenPanelsMm)[index]));
    }
    return spot;
}

}  // namespace coutil
