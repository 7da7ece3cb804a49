#include "ui/benches/pattern_scene.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <utility>

#include "core/alterations/whole_pattern.h"
#include "core/pattern/panel_key.h"
#include "ui/benches/free_room.h"
#include "ui/canvas/painter_path.h"
#include "ui/words/alteration_words.h"
#include "ui/words/trade_words.h"

namespace coutil {

namespace {

constexpr double kWaistTickMm = 5;
// Seam positions where a seam's name may stand, best first.
constexpr std::array kNamePositionsMm{40.0, 25.0, -30.0, -50.0, 60.0, 110.0, 140.0};

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

std::optional<QPointF> betweenEdges(const Pattern& pattern, const Seam& seam,
                                    const std::vector<Placement>& placements, double positionMm) {
    const auto front = pointAtSeamPosition(edgeAt(pattern, seam.front), positionMm);
    const auto back = pointAtSeamPosition(edgeAt(pattern, seam.back), positionMm);
    if (!front || !back) return std::nullopt;
    return (painterPoint(placed(*front, placements[seam.front.panel])) +
            painterPoint(placed(*back, placements[seam.back.panel]))) /
           2;
}

// Between the two edges: all names in one row above the waist, where the gaps are widest, else
// wherever along the seam there is room.
SceneLettering seamLettering(const Pattern& pattern, const Seam& seam,
                             const std::vector<Placement>& placements) {
    SceneLettering made;
    made.text = QString::fromStdString(seam.name);
    for (const double position : kNamePositionsMm) {
        if (const auto place = betweenEdges(pattern, seam, placements, position)) {
            made.places.push_back(*place);
        }
    }
    return made;
}

SceneEdgeRef sceneRef(const EdgeRef& ref) {
    return {static_cast<int>(ref.panel), static_cast<int>(ref.edge)};
}

void addLevels(TableScene& scene, const Pattern& pattern, double waistY) {
    for (const Level& level : pattern.levels) {
        scene.levels.push_back(
            {levelName(level.name), levelFigures(level, scene.unit), level.heightMm + waistY});
    }
}

// The levels of one row of a whole pattern: those that meet its panels, since the next row is near.
void addLevelsOfRow(TableScene& scene, const Pattern& pattern, PanelSide side, double waistY) {
    QRectF row;
    for (std::size_t p = 0; p < pattern.panels.size(); ++p) {
        if (pattern.panels[p].side == side) row |= scene.panels[p].sewing.boundingRect();
    }
    TableScene all;
    all.unit = scene.unit;
    addLevels(all, pattern, waistY);
    for (SceneLevel& level : all.levels) {
        if (level.yMm >= row.top() && level.yMm <= row.bottom())
            scene.levels.push_back(std::move(level));
    }
}

// A panel has one tint on both sides.
void tintRows(TableScene& scene, const Pattern& pattern) {
    std::map<PanelSide, int> next;
    for (std::size_t p = 0; p < pattern.panels.size(); ++p)
        scene.panels[p].tint = next[pattern.panels[p].side]++;
}

// "left" over the row of the left panels, "right" over that of the right ones.
void nameRows(TableScene& scene, const Pattern& pattern) {
    for (const PanelSide side : {PanelSide::left, PanelSide::right}) {
        QRectF row;
        QPointF corner;
        for (std::size_t p = 0; p < pattern.panels.size(); ++p) {
            if (pattern.panels[p].side != side) continue;
            const QRectF box = scene.panels[p].sewing.boundingRect();
            if (row.isNull()) corner = QPointF(box.center().x(), box.bottom());
            row |= box;
        }
        if (row.isNull()) continue;
        SceneLettering& name = scene.letterings.emplace_back();
        name.text = sideName(side == PanelSide::left ? BodySide::left : BodySide::right);
        for (const double aboveMm : {9.0, 14.0, 20.0, 27.0})
            name.places.push_back(corner + QPointF(0, aboveMm));
    }
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
        // A seam between the sides has its edges in two rows.
        if (pattern.panels[seam.front.panel].side != pattern.panels[seam.back.panel].side) continue;
        scene.letterings.push_back(seamLettering(pattern, seam, placements));
    }
    if (placements.empty()) return scene;
    if (!isWhole(pattern)) {
        addLevels(scene, pattern, placements.front().shift.y());
        return scene;
    }
    addLevelsOfRow(scene, pattern, PanelSide::left, placements.front().shift.y());
    addLevelsOfRow(scene, pattern, PanelSide::right, placements.back().shift.y());
    tintRows(scene, pattern);
    nameRows(scene, pattern);
    return scene;
}

ProblemSpot spotOf(const Problem& problem, const Pattern& pattern) {
    ProblemSpot spot;
    const auto found = std::find_if(pattern.panels.begin(), pattern.panels.end(),
                                    [&](const Panel& p) { return panelKey(p) == problem.panel; });
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
