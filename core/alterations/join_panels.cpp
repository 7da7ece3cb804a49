// Two panels become one.
#include <algorithm>
#include <cmath>

#include "core/alterations/alteration_kinds.h"
#include "core/alterations/change_problem.h"
#include "core/alterations/find_places.h"
#include "core/alterations/lay_on_waist.h"
#include "core/alterations/line_in_panel.h"
#include "core/geometry/cross_product.h"
#include "core/pattern/grain_line.h"
#include "core/pattern/level_lines.h"

namespace coutil {
namespace {

constexpr const char* kKind = "join_panels";
constexpr double kLookEveryMm = 5;

// The upward direction of a long edge at its waist mark.
Vector upAtWaist(const Edge& edge) {
    const Vector along = tangentAt(edge.path, positionAtLength(edge.path, *edge.waistMarkAtMm));
    return edge.runsUp ? along : -along;
}

Panel placedPanel(Panel panel, const Placement& placement) {
    for (Edge& edge : panel.edges) edge.path = placed(edge.path, placement);
    return panel;
}

// Lays `back` against `front`: waist mark on waist mark, direction on direction.
Placement layingTogether(const Edge& front, const Edge& back) {
    const Vector from = upAtWaist(back);
    const Vector to = upAtWaist(front);
    Placement placement =
        turnAbout(*waistMarkOf(back), std::atan2(crossProduct(from, to), from.dot(to)));
    placement.shift += *waistMarkOf(front) - *waistMarkOf(back);
    return placement;
}

// The widest place between two edges that lie together, at equal seam positions.
double widestGapMm(const Edge& front, const Edge& back) {
    const SeamLengths f = seamLengthsOf(front);
    double widestMm = 0;
    for (double mm = -f.belowWaistMm; mm <= f.aboveWaistMm; mm += kLookEveryMm) {
        const auto a = pointAtSeamPosition(front, mm);
        const auto b = pointAtSeamPosition(back, mm);
        if (a && b) widestMm = std::max(widestMm, (*a - *b).norm());
    }
    return widestMm;
}

// One line of two, smooth through the middle between the corners that met at the seam.
Path joinedLine(const Panel& front, const LineInPanel& inFront, const Panel& back,
                const LineInPanel& behind) {
    const Path first = rightwardsOf(front, inFront);
    const Path second = rightwardsOf(back, behind);
    const Point middle = (first.end() + second.start()) / 2;
    const Vector start = tangentAt(first.pieces.front(), 0);
    const Vector end = tangentAt(second.pieces.back(), 1);
    const Vector onward =
        (tangentAt(first.pieces.back(), 1) + tangentAt(second.pieces.front(), 0)).normalized();
    return joined(carriedLine(first, first.start(), middle, start, onward),
                  carriedLine(second, middle, second.end(), onward, end));
}

// "2a" and "2b" become "2" again, "2" and "3" become "2+3".
std::string joinedName(const std::string& front, const std::string& back) {
    const std::string stem = front.substr(0, front.size() - 1);
    const bool isSplit = !stem.empty() && front.ends_with('a') && back == stem + "b";
    return isSplit ? stem : front + "+" + back;
}

void moveReferences(Pattern& pattern, std::size_t f, std::size_t b) {
    constexpr std::size_t kBackEdge = 1;
    constexpr std::size_t kFrontEdge = 3;
    for (Seam& seam : pattern.seams) {
        for (EdgeRef* ref : {&seam.front, &seam.back}) {
            if (ref->panel == b) {
                *ref = {f, kBackEdge};
            } else if (ref->panel == f) {
                ref->edge = kFrontEdge;
            } else if (ref->panel > b) {
                --ref->panel;
            }
        }
    }
}

struct Lines {
    LineInPanel top;
    LineInPanel bottom;
};

std::optional<Lines> linesOf(const Panel& panel) {
    const auto top = lineInPanel(panel, EdgeRole::top);
    const auto bottom = lineInPanel(panel, EdgeRole::bottom);
    if (!top || !bottom) return std::nullopt;
    return Lines{*top, *bottom};
}

Edge lineEdge(std::string name, EdgeRole role, Path path) {
    return {.name = std::move(name), .role = role, .path = std::move(path)};
}

Panel onePanel(const Panel& front, const Lines& inFront, const Panel& back, const Lines& behind) {
    Panel one;
    one.name = joinedName(front.name, back.name);
    one.side = front.side;
    one.isOnFold = front.isOnFold;
    one.grain = front.grain;
    one.edges = {
        lineEdge("bottom", EdgeRole::bottom,
                 joinedLine(front, inFront.bottom, back, behind.bottom)),
        back.edges[behind.top.back],
        lineEdge("top", EdgeRole::top, reversed(joinedLine(front, inFront.top, back, behind.top))),
        front.edges[inFront.top.front]};
    if (const auto laying = layingOnWaist(one.edges[3], one.edges[1]))
        one = placedPanel(std::move(one), *laying);
    return one;
}

Problems joinOne(Pattern& pattern, std::size_t s) {
    const Seam seam = pattern.seams[s];
    const std::size_t f = seam.front.panel;
    const std::size_t b = seam.back.panel;
    const Panel& front = pattern.panels[f];
    const Edge& frontEdge = edgeAt(pattern, seam.front);
    const Edge& backEdge = edgeAt(pattern, seam.back);
    const auto inFront = linesOf(front);
    const auto behind = linesOf(pattern.panels[b]);
    if (!inFront || !behind || f == b || !waistMarkOf(frontEdge) || !waistMarkOf(backEdge) ||
        inFront->top.back != seam.front.edge || behind->top.front != seam.back.edge)
        return unfit(kKind, seam.name);
    const Panel back = placedPanel(pattern.panels[b], layingTogether(frontEdge, backEdge));
    const double gapMm = widestGapMm(frontEdge, back.edges[seam.back.edge]);
    Panel one = onePanel(front, *inFront, back, *behind);
    drawLevels(pattern.levels, one);
    keepGrainInside(one);
    const std::string name = one.name;
    pattern.seams.erase(pattern.seams.begin() + static_cast<std::ptrdiff_t>(s));
    moveReferences(pattern, f, b);
    pattern.panels[f] = std::move(one);
    pattern.panels.erase(pattern.panels.begin() + static_cast<std::ptrdiff_t>(b));
    constexpr double kWorthTellingMm = 1;
    if (gapMm < kWorthTellingMm) return {};
    return {{.code = ProblemCode::joinLeavesGap,
             .severity = Severity::warning,
             .subject = kKind,
             .detail = seam.name,
             .panel = name,
             .figures = {{"value", gapMm}}}};
}

}  // namespace

Problems joinPanels(Pattern& pattern, BodySide side, const JoinPanels& change) {
    auto seams = seamsNamed(pattern, change.seam, side);
    if (seams.empty()) return unfit(kKind, change.seam);
    Pattern changed = pattern;
    std::ranges::reverse(seams);
    Problems told;
    for (const std::size_t s : seams) {
        Problems problems = joinOne(changed, s);
        if (std::ranges::any_of(problems, isError)) return problems;
        told = std::move(problems);
    }
    measureGirths(changed.panels, changed.levels);
    pattern = std::move(changed);
    return told;
}

}  // namespace coutil
