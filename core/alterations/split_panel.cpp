// A new seam through a panel.
#include <algorithm>
#include <cmath>

#include "core/alterations/alteration_kinds.h"
#include "core/alterations/change_problem.h"
#include "core/alterations/cut_edge.h"
#include "core/alterations/find_places.h"
#include "core/alterations/line_in_panel.h"
#include "core/alterations/settle.h"
#include "core/geometry/tolerances.h"
#include "core/pattern/grain_line.h"
#include "core/pattern/level_lines.h"
#include "core/pattern/outline_check.h"

namespace coutil {
namespace {

constexpr const char* kKind = "split_panel";

// Where everything of a panel lies in the two it becomes.
struct TwoPanels {
    Panel front;  // edges: bottom, new seam (up), top, front edge
    Panel back;   // edges: bottom, back edge, top, new seam (down)
};

Edge lineEdge(const Edge& whole, Path path) {
    return {.name = whole.name, .role = whole.role, .path = std::move(path)};
}

TwoPanels twoOf(const Panel& panel, const LineInPanel& top, const LineInPanel& bottom,
                const SplitPanel& change) {
    const Path topPath = rightwardsOf(panel, top);
    const Path bottomPath = rightwardsOf(panel, bottom);
    const PathPosition atTop = positionAtLength(topPath, change.topAlongMm);
    const PathPosition atBottom = positionAtLength(bottomPath, change.bottomAlongMm);
    const auto upTo = [](const Path& path, const PathPosition& at) {
        return between(path, {0, 0}, at);
    };
    const auto from = [](const Path& path, const PathPosition& at) {
        return between(path, at, {path.pieces.size() - 1, 1});
    };
    const Path seam = straightPath(pointAt(bottomPath, atBottom), pointAt(topPath, atTop));
    const double waistMm = waistOnMm(seam, Point::Zero()).value_or(0);
    const std::string name = "seam " + panel.name + "a-" + panel.name + "b";
    TwoPanels two;
    two.front.name = panel.name + "a";
    two.back.name = panel.name + "b";
    two.front.isOnFold = panel.isOnFold;
    two.front.side = two.back.side = panel.side;
    two.front.grain = two.back.grain = panel.grain;
    const Edge& topEdge = panel.edges[top.line];
    const Edge& bottomEdge = panel.edges[bottom.line];
    two.front.edges = {lineEdge(bottomEdge, upTo(bottomPath, atBottom)),
                       {.name = name, .path = seam, .waistMarkAtMm = waistMm, .runsUp = true},
                       lineEdge(topEdge, reversed(upTo(topPath, atTop))),
                       panel.edges[top.front]};
    two.back.edges = {lineEdge(bottomEdge, from(bottomPath, atBottom)),
                      panel.edges[top.back],
                      lineEdge(topEdge, reversed(from(topPath, atTop))),
                      {.name = name,
                       .path = reversed(seam),
                       .waistMarkAtMm = lengthMm(seam) - waistMm,
                       .runsUp = false}};
    return two;
}

// Joints of the outline to the last bit.
void close(Panel& panel) {
    for (std::size_t e = 0; e < panel.edges.size(); ++e) {
        Edge& next = panel.edges[(e + 1) % panel.edges.size()];
        if (next.role == EdgeRole::top || next.role == EdgeRole::bottom) {
            next.path.pieces.front().p0 = panel.edges[e].path.end();
        } else {
            panel.edges[e].path.pieces.back().p3 = next.path.start();
        }
    }
}

// References to the panel's long edges, and to all panels behind, follow.
void moveReferences(Pattern& pattern, std::size_t p, const LineInPanel& line) {
    constexpr std::size_t kBackEdge = 1;
    constexpr std::size_t kFrontEdge = 3;
    for (Seam& seam : pattern.seams) {
        for (EdgeRef* ref : {&seam.front, &seam.back}) {
            if (ref->panel > p) {
                ++ref->panel;
            } else if (ref->panel == p && ref->edge == line.back) {
                *ref = {p + 1, kBackEdge};
            } else if (ref->panel == p) {
                ref->edge = kFrontEdge;
            }
        }
    }
}

// The new seam stands between those of its panel.
void addSeam(Pattern& pattern, std::size_t p) {
    const std::string& name = pattern.panels[p].edges[1].name;
    const auto behind =
        std::ranges::find_if(pattern.seams, [&](const Seam& seam) { return seam.front.panel > p; });
    pattern.seams.insert(
        behind, {.name = name.substr(name.find(' ') + 1), .front = {p, 1}, .back = {p + 1, 3}});
}

Problems splitOne(Pattern& pattern, std::size_t p, const SplitPanel& change) {
    const Panel panel = pattern.panels[p];
    const auto top = lineInPanel(panel, EdgeRole::top);
    const auto bottom = lineInPanel(panel, EdgeRole::bottom);
    if (!top || !bottom) return unfit(kKind, change.panel);
    const auto within = [&](const LineInPanel& line, double alongMm) {
        const double wholeMm = lengthMm(panel.edges[line.line].path);
        return alongMm > tolerance::kNarrowestPanelMm / 2 &&
               alongMm < wholeMm - tolerance::kNarrowestPanelMm / 2;
    };
    if (!within(*top, change.topAlongMm) || !within(*bottom, change.bottomAlongMm))
        return unfit(kKind, change.panel);
    TwoPanels two = twoOf(panel, *top, *bottom, change);
    if (!waistOnMm(two.front.edges[1].path, Point::Zero())) return badValue(kKind, change.panel);
    for (Panel* each : {&two.front, &two.back}) {
        close(*each);
        const auto narrowest = narrowestWidthOf(*each);
        if (!narrowest || narrowest->widthMm < tolerance::kNarrowestPanelMm)
            return breaksPanel(kKind, change.panel, each->name);
        drawLevels(pattern.levels, *each);
        keepGrainInside(*each);
    }
    moveReferences(pattern, p, *top);
    pattern.panels[p] = std::move(two.front);
    pattern.panels.insert(pattern.panels.begin() + static_cast<std::ptrdiff_t>(p) + 1,
                          std::move(two.back));
    addSeam(pattern, p);
    return {};
}

}  // namespace

Problems splitPanel(Pattern& pattern, BodySide side, const SplitPanel& change) {
    if (!isSoundMm(change.bottomAlongMm) || !isSoundMm(change.topAlongMm))
        return badValue(kKind, change.panel);
    auto panels = panelsNamed(pattern, change.panel, side);
    if (panels.empty()) return unfit(kKind, change.panel);
    Pattern changed = pattern;
    // From behind, so that the places of those in front stay.
    std::ranges::reverse(panels);
    for (const std::size_t p : panels) {
        if (Problems problems = splitOne(changed, p, change); !problems.empty()) return problems;
    }
    measureGirths(changed.panels, changed.levels);
    pattern = std::move(changed);
    return {};
}

}  // namespace coutil
