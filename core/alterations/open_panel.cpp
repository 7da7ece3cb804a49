// Opening and closing a panel about a hinge, or by a slit with a closed end.
#include <algorithm>
#include <cmath>

#include "core/alterations/alteration_kinds.h"
#include "core/alterations/change_problem.h"
#include "core/alterations/find_places.h"
#include "core/alterations/move_edge.h"
#include "core/alterations/opened_panel.h"
#include "core/alterations/settle.h"
#include "core/geometry/tolerances.h"

namespace coutil {
namespace {

constexpr const char* kKind = "open_panel";
constexpr double kShortestCutMm = 20;
constexpr double kEndedMm = 5;

// A panel opened by its cut; the angle of an opening n at distance d is 2 asin(n / 2d).
Problems openAboutHinge(Panel& panel, const OpenPanel& change) {
    const auto cut = cutOf(panel, change.mouth, *change.hinge);
    if (!cut) return unfit(kKind, change.panel);
    const double distanceMm = cut->distanceMm();
    if (distanceMm < kShortestCutMm) return badValue(kKind, change.panel);
    const double limitMm = distanceMm / 2;
    if (std::abs(change.amountMm) > limitMm)
        return tooLarge(kKind, change.panel, std::abs(change.amountMm), limitMm);
    auto opened = openedAboutHinge(panel, *cut, 2 * std::asin(change.amountMm / (2 * distanceMm)));
    if (!opened) return unfit(kKind, change.panel);
    panel = std::move(opened->panel);
    return {};
}

// The readings of a long edge beside a slit: nothing at its closed end, all at its mouth, going on
// as steeply beyond, so that the widening begins softly and runs out straight.
std::vector<AmountAt> slitReadings(const Edge& edge, const Point& slitEnd, bool isTop,
                                   double inwardMm) {
    const UpwardEdge upwards = upwardOf(edge);
    const double endMm =
        lengthToMm(upwards.path, closestOn(upwards.path, slitEnd).position) - upwards.waistAtMm;
    const double mouthMm = isTop ? lengthMm(upwards.path) - upwards.waistAtMm : -upwards.waistAtMm;
    return {{endMm, 0}, {mouthMm, inwardMm}, {2 * mouthMm - endMm, 2 * inwardMm}};
}

Problems openSlit(Pattern& pattern, std::size_t p, const OpenPanel& change) {
    const Panel& panel = pattern.panels[p];
    const auto line = edgeNamed(panel, change.mouth.edge);
    const auto mouth = pointOf(panel, change.mouth);
    const auto edges = longEdgesOf(panel);
    if (!line || !mouth || !edges) return unfit(kKind, change.panel);
    const EdgeRole role = panel.edges[*line].role;
    if (role != EdgeRole::top && role != EdgeRole::bottom) return badValue(kKind, change.panel);
    const bool isTop = role == EdgeRole::top;
    const Point slitEnd = *mouth + Vector(0, isTop ? -*change.slitLengthMm : *change.slitLengthMm);
    const auto crossing = crossingAtHeight(panel, slitEnd.y());
    if (!crossing) return unfit(kKind, change.panel);
    const double limitMm = *change.slitLengthMm / 2;
    if (std::abs(change.amountMm) > limitMm)
        return tooLarge(kKind, change.panel, std::abs(change.amountMm), limitMm);
    Pattern changed = pattern;
    for (const auto& [e, at] :
         {std::pair{edges->front, crossing->front}, std::pair{edges->back, crossing->back}}) {
        Edge& edge = changed.panels[p].edges[e];
        if (!edge.waistMarkAtMm) return unfit(kKind, change.panel);
        EdgeShift shift;
        // Nothing moves beyond the closed end.
        const Fade carried{std::nullopt};
        const Fade ended{kEndedMm};
        shift.add(1, AmountCurve(slitReadings(edge, at, isTop, -change.amountMm / 2),
                                 isTop ? carried : ended, isTop ? ended : carried));
        auto path = movedAlongNormal(upwardOf(edge), shift);
        if (!path) return breaksPanel(kKind, change.panel, panel.name);
        edge.path = edge.runsUp ? *std::move(path) : reversed(*path);
    }
    settle(pattern, changed);
    pattern = std::move(changed);
    return {};
}

}  // namespace

Problems openPanel(Pattern& pattern, BodySide side, const OpenPanel& change) {
    const bool isSlit = change.slitLengthMm.has_value();
    if (!isSoundMm(change.amountMm) || !isSoundMm(change.mouth.alongMm) ||
        isSlit == change.hinge.has_value() ||
        (isSlit && !(isSoundMm(*change.slitLengthMm) && *change.slitLengthMm >= kShortestCutMm)) ||
        (change.hinge && !isSoundMm(change.hinge->alongMm)))
        return badValue(kKind, change.panel);
    const auto panels = panelsNamed(pattern, change.panel, side);
    if (panels.empty()) return unfit(kKind, change.panel);
    Pattern changed = pattern;
    for (const std::size_t p : panels) {
        Problems problems =
            isSlit ? openSlit(changed, p, change) : openAboutHinge(changed.panels[p], change);
        if (!problems.empty()) return problems;
    }
    refreshFigures(pattern, changed);
    pattern = std::move(changed);
    return {};
}

}  // namespace coutil
