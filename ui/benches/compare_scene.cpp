#include "ui/benches/compare_scene.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "ui/benches/free_room.h"
#include "ui/canvas/painter_path.h"
#include "ui/comparing/figure_text.h"
#include "ui/words/alteration_words.h"
#include "ui/words/trade_words.h"

namespace coutil {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(CompareScene)
};

constexpr double kWaistTickMm = 5;

ScenePen penOf(const ComparedState& state) {
    ScenePen pen;
    pen.ink = state.revision > 0 ? ScenePen::Ink::revision : ScenePen::Ink::graphite;
    pen.revision = state.revision;
    pen.isDotted = state.isDotted;
    return pen;
}

QRectF rectOf(const Box& box) {
    return {box.lowest.x(), box.lowest.y(), box.widthMm(), box.heightMm()};
}

QString edgeFigures(const PanelComparison& pair, const Edge& edge, LengthUnit unit) {
    const auto found = std::ranges::find(pair.edges, edge.name, &EdgeComparison::edge);
    const QString name = edgeName(edge.name);
    if (found == pair.edges.end()) {
        return Words::tr("%1: only in %2").arg(name, pair.inA ? Words::tr("A") : Words::tr("B"));
    }
    if (found->largestMm < kSmallestToldMm) {
        return Words::tr("%1: the same in both").arg(name);
    }
    const QString apart = lengthText(found->largestMm, unit);
    return found->alongAMm ? Words::tr("%1: %2 apart at most, at %3")
                                 .arg(name, apart, placeText(*found->alongAMm, unit))
                           : Words::tr("%1: %2 apart at most").arg(name, apart);
}

void addWaistMarks(ScenePanel& made, const Panel& panel, const Placement& placement) {
    for (const Edge& edge : panel.edges) {
        const auto mark = pointAtSeamPosition(edge, 0);
        if (!mark) continue;
        const Vector inwards(edge.runsUp ? -kWaistTickMm : kWaistTickMm, 0);
        made.notches.emplace_back(painterPoint(placed(*mark, placement)),
                                  painterPoint(placed(Point(*mark + inwards), placement)));
    }
}

ScenePanel scenePanel(const Panel& panel, const PanelComparison& pair, const Vector& shift,
                      LengthUnit unit) {
    const Placement placement{.shift = shift};
    ScenePanel made;
    made.number = QString::fromStdString(panel.name);
    for (const Edge& edge : panel.edges) {
        SceneEdge& line = made.edges.emplace_back();
        line.name = edgeName(edge.name);
        line.figures = edgeFigures(pair, edge, unit);
        line.path = painterPath(placed(edge.path, placement));
        line.isFold = edge.role == EdgeRole::fold;
        made.figures += (made.figures.isEmpty() ? QString() : QStringLiteral("; ")) + line.figures;
    }
    made.sewing = painterPath(placed(outlineOf(panel), placement), true);
    made.grain = QLineF(painterPoint(placed(panel.grain[0], placement)),
                        painterPoint(placed(panel.grain[1], placement)));
    addWaistMarks(made, panel, placement);
    std::vector<double> heights;
    for (const LevelLine& level : panel.levels) heights.push_back(level.front.y());
    made.numberRoom = freeRoom(outlineOf(panel), heights).translated(shift.x(), shift.y());
    return made;
}

// A level that is at one height in both has one line; else each its own, named.
void addLevels(TableScene& scene, const ComparedStates& states, const ComparedLayout& layout,
               bool hasA, bool hasB) {
    for (const double waist : layout.waistHeightMm) {
        for (const LevelComparison& level : states.comparison.levels) {
            const QString name = levelName(level.level);
            const bool isInA =
                hasA && level.heightAMm && reachesLevel(states.a.pattern, level.level);
            const bool isInB =
                hasB && level.heightBMm && reachesLevel(states.b.pattern, level.level);
            if (!isInA && !isInB) continue;
            const double a = (isInA ? level.heightAMm : level.heightBMm).value_or(0);
            const double b = (isInB ? level.heightBMm : level.heightAMm).value_or(0);
            const QString figures =
                Words::tr("%1: A %2, B %3 (%4)")
                    .arg(name, figureText(level.aMm, scene.unit), figureText(level.bMm, scene.unit),
                         differenceText(level.differenceMm, scene.unit));
            const auto add = [&](const QString& words, double height, int column = 0) {
                scene.levels.push_back({words, figures, height + waist, column});
            };
            if (std::abs(a - b) < kSmallestToldMm) {
                add(name, a);
                continue;
            }
            add(Words::tr("%1 (A)", "level").arg(name), a);
            add(Words::tr("%1 (B)", "level").arg(name), b, 1);
        }
    }
}

// "left" and "right" over the rows of a whole pattern.
void nameRows(TableScene& scene, const ComparedStates& states, const ComparedLayout& layout) {
    if (states.areSides) return;
    for (const PanelSide side : {PanelSide::left, PanelSide::right}) {
        const auto& pairs = states.comparison.panels;
        const auto first = std::ranges::find(pairs, side, &PanelComparison::side);
        if (first == pairs.end()) continue;
        const auto index = static_cast<std::size_t>(first - pairs.begin());
        QRectF box = scene.panels[index].sewing.boundingRect();
        if (!layout.pairs[index].b.isEmpty()) box |= rectOf(boundsOf(layout.pairs[index].b));
        SceneLettering& name = scene.letterings.emplace_back();
        name.text = sideName(side == PanelSide::left ? BodySide::left : BodySide::right);
        for (const double overMm : {9.0, 14.0, 20.0, 27.0}) {
            name.places.emplace_back(box.center().x(), box.bottom() + overMm);
        }
        for (const double underMm : {25.0, 35.0, 45.0}) {
            name.places.emplace_back(layout.box.highest.x() + 22, box.center().y() - underMm);
        }
    }
}

TableScene emptyScene(const ComparedLayout& layout, LengthUnit unit) {
    TableScene scene;
    scene.unit = unit;
    scene.isPencil = false;
    scene.room = rectOf(layout.box);
    return scene;
}

}  // namespace

TableScene overlaidScene(const ComparedStates& states, const ComparedLayout& layout, double factor,
                         LengthUnit unit) {
    TableScene scene = emptyScene(layout, unit);
    for (std::size_t i = 0; i < layout.pairs.size(); ++i) {
        const PanelComparison& pair = states.comparison.panels[i];
        const PairOnTable& placedPair = layout.pairs[i];
        const Vector shift = pair.inA ? placedPair.shift : placedPair.shift + pair.shiftOfB;
        ScenePanel& panel =
            scene.panels.emplace_back(scenePanel(panelShown(states, pair), pair, shift, unit));
        panel.pen = penOf(pair.inA ? states.a : states.b);
        if (pair.inA && pair.inB) {
            scene.strokes.push_back({painterPath(placedPair.b, true), penOf(states.b), false});
        }
    }
    addLevels(scene, states, layout, true, true);
    nameRows(scene, states, layout);
    scene.legend = {{penOf(states.a), lineNameA(states)}, {penOf(states.b), lineNameB(states)}};
    scene.caption = factorWords(factor);
    return scene;
}

TableScene singleScene(const ComparedStates& states, const ComparedLayout& layout,
                       ComparedOne which, LengthUnit unit) {
    TableScene scene = emptyScene(layout, unit);
    const bool isA = which == ComparedOne::a;
    const ComparedState& state = isA ? states.a : states.b;
    for (std::size_t i = 0; i < layout.pairs.size(); ++i) {
        const PanelComparison& pair = states.comparison.panels[i];
        const auto& index = isA ? pair.inA : pair.inB;
        if (!index) {
            scene.panels.emplace_back();
            continue;
        }
        const Vector shift =
            isA ? layout.pairs[i].shift : Vector(layout.pairs[i].shift + pair.shiftOfB);
        ScenePanel& panel =
            scene.panels.emplace_back(scenePanel(state.pattern.panels[*index], pair, shift, unit));
        panel.pen = penOf(state);
    }
    addLevels(scene, states, layout, isA, !isA);
    nameRows(scene, states, layout);
    scene.legend = {{penOf(state), isA ? lineNameA(states) : lineNameB(states)}};
    return scene;
}

QString factorWords(double factor) {
    if (factor == 1) return {};
    return Words::tr("differences drawn %1 times as large").arg(qRound(factor));
}

}  // namespace coutil
