#include "core/alterations/settle.h"

#include <algorithm>

#include "core/alterations/cut_edge.h"
#include "core/alterations/draw_lines.h"
#include "core/alterations/upward_edge.h"
#include "core/pattern/grain_line.h"
#include "core/pattern/level_lines.h"

namespace coutil {
namespace {

void cutEdge(const Edge& before, Edge& edge, const SeamLengths& wanted) {
    UpwardEdge upwards = upwardOf(edge);
    const Point oldMark = *pointAtSeamPosition(before, 0);
    upwards.waistAtMm =
        waistOnMm(upwards.path, oldMark)
            .value_or(lengthToMm(upwards.path, closestOn(upwards.path, oldMark).position));
    setUpward(edge, cutToLengths(upwards, wanted));
}

}  // namespace

void cutLongEdges(const Pattern& before, Pattern& moved, const std::vector<WantedLengths>& wanted) {
    for (std::size_t p = 0; p < moved.panels.size(); ++p) {
        for (std::size_t e = 0; e < moved.panels[p].edges.size(); ++e) {
            const Edge& old = before.panels[p].edges[e];
            Edge& edge = moved.panels[p].edges[e];
            if (!old.waistMarkAtMm) continue;
            const auto asked = std::ranges::find(wanted, EdgeRef{p, e}, &WantedLengths::edge);
            if (asked == wanted.end() && old.path == edge.path) continue;
            cutEdge(old, edge, asked == wanted.end() ? seamLengthsOf(old) : asked->lengths);
        }
    }
}

void refreshFigures(const Pattern& before, Pattern& pattern) {
    bool hasChanged = false;
    for (std::size_t p = 0; p < pattern.panels.size(); ++p) {
        Panel& panel = pattern.panels[p];
        if (p < before.panels.size() && panel.edges == before.panels[p].edges) continue;
        drawLevels(pattern.levels, panel);
        keepGrainInside(panel);
        hasChanged = true;
    }
    if (hasChanged) measureGirths(pattern.panels, pattern.levels);
}

void settle(const Pattern& before, Pattern& moved, const std::vector<WantedLengths>& wanted) {
    cutLongEdges(before, moved, wanted);
    drawLinesAgain(before, moved);
    refreshFigures(before, moved);
}

}  // namespace coutil
