#include "core/alterations/opposite_change.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>
#include <vector>

#include "core/alterations/corner_move.h"
#include "core/alterations/find_places.h"
#include "core/alterations/line_of_half.h"
#include "core/alterations/opened_panel.h"

namespace coutil {
namespace {

// Where a point of the panel lies on an edge, as an EdgePlace counts.
double alongOf(const Panel& panel, const std::string& edge, const Point& near) {
    const Edge& found = panel.edges[*edgeNamed(panel, edge)];
    const double fromStartMm = lengthToMm(found.path, closestOn(found.path, near).position);
    if (found.role == EdgeRole::top) return lengthMm(found.path) - fromStartMm;
    if (found.role == EdgeRole::bottom) return fromStartMm;
    return found.runsUp ? fromStartMm - *found.waistMarkAtMm : *found.waistMarkAtMm - fromStartMm;
}

// A place on a top or bottom line that has become shorter: at its end at most.
void keepWithin(const Panel& panel, EdgePlace& place) {
    const Edge& edge = panel.edges[*edgeNamed(panel, place.edge)];
    if (edge.role == EdgeRole::top || edge.role == EdgeRole::bottom)
        place.alongMm = std::clamp(place.alongMm, 0.0, lengthMm(edge.path));
}

std::optional<OpenPanel> closing(const Panel& before, const Panel& changed,
                                 const OpenPanel& change) {
    const auto cut = cutOf(before, change.mouth, *change.hinge);
    if (!cut) return std::nullopt;
    const double rad = 2 * std::asin(change.amountMm / (2 * cut->distanceMm()));
    const auto opened = openedAboutHinge(before, *cut, rad);
    if (!opened) return std::nullopt;
    OpenPanel back = change;
    const Edge& hingeEdge = before.edges[cut->hingeEdge];
    if (hingeEdge.role == EdgeRole::top || hingeEdge.role == EdgeRole::bottom)
        back.hinge->alongMm = alongOf(changed, change.hinge->edge, opened->hinge);
    keepWithin(changed, back.mouth);
    keepWithin(changed, *back.hinge);
    const auto newCut = cutOf(changed, back.mouth, *back.hinge);
    if (!newCut) return std::nullopt;
    back.amountMm = -2 * newCut->distanceMm() * std::sin(rad / 2);
    return back;
}

// Readings every so often along the raised line, each with the amount it was raised by.
void readBack(const Pattern& before, const Pattern& changed, const PanelOnLine& each,
              const AmountCurve& curve, std::vector<LineAmount>& amounts) {
    constexpr double kEveryMm = 6;
    const Panel& old = before.panels[each.panel];
    const Panel& now = changed.panels[each.panel];
    const double lengthOldMm = each.toMm - each.fromMm;
    const Path line = rightwardsOf(now, each.place);
    const double lengthNowMm = lengthMm(line);
    const Path was = rightwardsOf(old, each.place);
    const PanelCorners corners = cornersOf(old, each.place);
    const int parts = std::max(1, static_cast<int>(std::ceil(lengthOldMm / kEveryMm)));
    for (int k = 0; k <= parts; ++k) {
        const double share = static_cast<double>(k) / parts;
        const double atMm = each.fromMm + share * lengthOldMm;
        if (atMm < curve.lowestMm() || atMm > curve.highestMm()) continue;
        const double upMm = curve.at(atMm);
        const Point raised = pointAtLength(was, share * lengthOldMm) +
                             upMm * ((1 - share) * corners.frontUp + share * corners.backUp);
        double alongMm = lengthToMm(line, closestOn(line, raised).position);
        if (k == 0) alongMm = 0;
        if (k == parts) alongMm = lengthNowMm;
        // A corner is read once.
        const bool isRead = k == 0 && !amounts.empty();
        if (!isRead) amounts.push_back({{.panel = now.name, .alongMm = alongMm}, -upMm});
    }
}

std::optional<Change> loweringBack(const Pattern& before, const Pattern& changed, BodySide side,
                                   const ReshapeEdge& change) {
    const LineOfHalf half = linesOfHalves(before, side, change.line).front();
    std::vector<AmountAt> readings;
    for (const LineAmount& each : change.amounts)
        readings.push_back({*positionOf(before, half, each.place), each.amountMm});
    const AmountCurve curve(std::move(readings), change.towardsBack, change.towardsFront);
    constexpr double kEndRunMm = 5;
    ReshapeEdge back{change.line, {}, {kEndRunMm}, {kEndRunMm}};
    for (const PanelOnLine& each : half.panels)
        readBack(before, changed, each, curve, back.amounts);
    if (back.amounts.empty()) return std::nullopt;
    return back;
}

struct Opposite {
    const Pattern& before;
    const Pattern& changed;
    BodySide side = BodySide::both;

    std::optional<Change> operator()(const OpenPanel& change) const {
        if (change.hinge) {
            const std::size_t p = panelsNamed(before, change.panel, side).front();
            return closing(before.panels[p], changed.panels[p], change);
        }
        OpenPanel back = change;
        back.amountMm = -change.amountMm;
        return back;
    }
    std::optional<Change> operator()(const ChangeLength& change) const {
        ChangeLength back = change;
        back.amountMm = -change.amountMm;
        return back;
    }
    std::optional<Change> operator()(const MoveLevel& change) const {
        MoveLevel back = change;
        back.upMm = -change.upMm;
        back.widerMm = -change.widerMm;
        return back;
    }
    std::optional<Change> operator()(const MoveHandle& change) const {
        MoveHandle back = change;
        back.byMm = -change.byMm;
        return back;
    }
    std::optional<Change> operator()(const MoveCorner& change) const {
        const std::size_t p = panelsNamed(before, change.panel, side).front();
        const std::size_t e = *edgeNamed(before.panels[p], change.edge);
        const CornerMove move = cornerMoveOf(before.panels[p].edges[e], change.end, change.byMm);
        MoveCorner back = change;
        back.byMm = vectorOf(changed.panels[p].edges[e], change.end, {-move.outMm, -move.inwardMm});
        return back;
    }
    std::optional<Change> operator()(const ReshapeEdge& change) const {
        return loweringBack(before, changed, side, change);
    }
    std::optional<Change> operator()(const SplitPanel& change) const {
        return JoinPanels{change.panel + "a-" + change.panel + "b"};
    }
    template <class OtherChange>
    std::optional<Change> operator()(const OtherChange&) const {
        return std::nullopt;
    }
};

}  // namespace

std::optional<Change> oppositeOf(const Pattern& before, const Pattern& changed, BodySide side,
                                 const Change& change) {
    return std::visit(Opposite{before, changed, side}, change);
}

}  // namespace coutil
