// Moving the upper or lower end of a long edge.
#include <cmath>
#include <optional>

#include "core/alterations/alteration_kinds.h"
#include "core/alterations/change_problem.h"
#include "core/alterations/corner_move.h"
#include "core/alterations/find_places.h"
#include "core/alterations/move_edge.h"
#include "core/alterations/run_on_curve.h"
#include "core/alterations/settle.h"

namespace coutil {
namespace {

constexpr const char* kKind = "move_corner";
constexpr double kMostMm = 150;
// How far towards the waist the edge bends to follow its end.
constexpr double kBentShare = 2.0 / 3;

double lengthBesideWaistMm(const Edge& edge, EdgeLine end) {
    const SeamLengths lengths = seamLengthsOf(edge);
    return end == EdgeLine::top ? lengths.aboveWaistMm : lengths.belowWaistMm;
}

// Across: this edge alone bends; its length stays.
bool moveAcross(Pattern& pattern, const EdgeRef& ref, EdgeLine end, double inwardMm) {
    if (inwardMm == 0) return true;
    Pattern changed = pattern;
    Edge& edge = changed.panels[ref.panel].edges[ref.edge];
    const double besideMm = lengthBesideWaistMm(edge, end);
    const Fade fade{besideMm * kBentShare};
    const Fade carried{std::nullopt};
    const bool isTop = end == EdgeLine::top;
    EdgeShift shift;
    shift.add(1, AmountCurve({{isTop ? besideMm : -besideMm, inwardMm}}, isTop ? carried : fade,
                             isTop ? fade : carried));
    auto path = movedAlongNormal(upwardOf(edge), shift);
    if (!path) return false;
    edge.path = edge.runsUp ? *std::move(path) : reversed(*path);
    settle(pattern, changed);
    pattern = std::move(changed);
    return true;
}

// Along: both edges of the seam.
bool moveAlong(Pattern& pattern, const EdgeRef& ref, EdgeLine end, double outMm) {
    if (outMm == 0) return true;
    Pattern changed = pattern;
    std::vector<EdgeRef> edges{ref};
    if (const Seam* seam = seamOf(pattern, ref)) edges = {seam->front, seam->back};
    std::vector<WantedLengths> wanted;
    for (const EdgeRef& each : edges) {
        Edge& edge = changed.panels[each.panel].edges[each.edge];
        const auto moved = endMoved(upwardOf(edge), end, outMm);
        if (!moved) return false;
        setUpward(edge, *moved);
        wanted.push_back({each, seamLengthsOf(edge)});
    }
    settle(pattern, changed, wanted);
    pattern = std::move(changed);
    return true;
}

}  // namespace

CornerMove cornerMoveOf(const Edge& edge, EdgeLine end, const Vector& byMm) {
    const UpwardEdge upwards = upwardOf(edge);
    const bool isTop = end == EdgeLine::top;
    const Vector up = isTop ? tangentAt(upwards.path.pieces.back(), 1)
                            : tangentAt(upwards.path.pieces.front(), 0);
    return {(isTop ? 1 : -1) * byMm.dot(up), byMm.dot(inwardOf(up, upwards.hasPanelOnLeft))};
}

Vector vectorOf(const Edge& edge, EdgeLine end, const CornerMove& move) {
    const UpwardEdge upwards = upwardOf(edge);
    const bool isTop = end == EdgeLine::top;
    const Vector up = isTop ? tangentAt(upwards.path.pieces.back(), 1)
                            : tangentAt(upwards.path.pieces.front(), 0);
    return up * ((isTop ? 1 : -1) * move.outMm) +
           inwardOf(up, upwards.hasPanelOnLeft) * move.inwardMm;
}

Problems moveCorner(Pattern& pattern, BodySide side, const MoveCorner& change) {
    const std::string what = change.panel + ", " + change.edge;
    if (!isSoundMm(change.byMm.x()) || !isSoundMm(change.byMm.y())) return badValue(kKind, what);
    if (change.byMm.norm() > kMostMm) return tooLarge(kKind, what, change.byMm.norm(), kMostMm);
    const auto panels = panelsNamed(pattern, change.panel, side);
    if (panels.empty()) return unfit(kKind, change.panel);
    Pattern changed = pattern;
    for (const std::size_t p : panels) {
        const auto e = edgeNamed(pattern.panels[p], change.edge);
        if (!e || !pattern.panels[p].edges[*e].waistMarkAtMm) return unfit(kKind, what);
        const EdgeRef ref{p, *e};
        const CornerMove move = cornerMoveOf(edgeAt(changed, ref), change.end, change.byMm);
        // The shorter edge bends, so that the opposite finds the same bend.
        const bool alongFirst = move.outMm < 0;
        const bool isDone = alongFirst ? moveAlong(changed, ref, change.end, move.outMm) &&
                                             moveAcross(changed, ref, change.end, move.inwardMm)
                                       : moveAcross(changed, ref, change.end, move.inwardMm) &&
                                             moveAlong(changed, ref, change.end, move.outMm);
        if (!isDone) return breaksPanel(kKind, what, pattern.panels[p].name);
    }
    pattern = std::move(changed);
    return {};
}

}  // namespace coutil
