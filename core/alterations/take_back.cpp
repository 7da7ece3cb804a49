#include "core/alterations/take_back.h"

#include <algorithm>
#include <cmath>

#include "core/alterations/alteration_kinds.h"
#include "core/alterations/corner_move.h"
#include "core/alterations/find_places.h"
#include "core/alterations/line_of_half.h"
#include "core/alterations/opened_panel.h"
#include "core/geometry/tolerances.h"

namespace coutil {
namespace {

using Kind = Problems (*)(Pattern&, BodySide, const Change&);

template <class Specific, Problems (*apply)(Pattern&, BodySide, const Specific&)>
Problems applied(Pattern& pattern, BodySide side, const Change& change) {
    return apply(pattern, side, std::get<Specific>(change));
}

std::optional<Pattern> after(const Pattern& before, BodySide side, const Change& change,
                             Kind apply) {
    Pattern pattern = before;
    if (std::ranges::any_of(apply(pattern, side, change), isError)) return std::nullopt;
    return pattern;
}

// `back`, if it brings `changed` back to `before`.
std::optional<Change> proven(const Pattern& before, const Pattern& changed, BodySide side,
                             Change back, Kind apply) {
    const auto again = after(changed, side, back, apply);
    if (!again || outlinesApartMm(before, *again) > tolerance::kTakenBackMm) return std::nullopt;
    return back;
}

template <class Specific>
std::optional<Change> opposite(const Pattern& before, BodySide side, const Specific& change,
                               const Specific& back, Kind apply) {
    const auto changed = after(before, side, change, apply);
    if (!changed) return std::nullopt;
    return proven(before, *changed, side, back, apply);
}

// Where a point of the panel lies on an edge, as an EdgePlace counts.
double alongOf(const Panel& panel, const std::string& edge, const Point& near) {
    const Edge& found = panel.edges[*edgeNamed(panel, edge)];
    const double fromStartMm = lengthToMm(found.path, closestOn(found.path, near).position);
    if (found.role == EdgeRole::top) return lengthMm(found.path) - fromStartMm;
    if (found.role == EdgeRole::bottom) return fromStartMm;
    return found.runsUp ? fromStartMm - *found.waistMarkAtMm : *found.waistMarkAtMm - fromStartMm;
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

}  // namespace

double outlinesApartMm(const Pattern& first, const Pattern& second) {
    double farthestMm = 0;
    const auto look = [&](const Path& from, const Path& to) {
        for (const Point& point : flattened(from, tolerance::kCheckFlatnessMm))
            farthestMm = std::max(farthestMm, closestOn(to, point).distanceMm);
    };
    for (std::size_t p = 0; p < first.panels.size(); ++p) {
        for (std::size_t e = 0; e < first.panels[p].edges.size(); ++e) {
            const Path& a = first.panels[p].edges[e].path;
            const Path& b = second.panels[p].edges[e].path;
            if (a == b) continue;
            look(a, b);
            look(b, a);
        }
    }
    return farthestMm;
}

std::optional<Change> takenBack(const Pattern& before, BodySide side, const OpenPanel& change) {
    if (!change.hinge) return std::nullopt;
    constexpr Kind kApply = applied<OpenPanel, openPanel>;
    const auto changed = after(before, side, change, kApply);
    if (!changed) return std::nullopt;
    const std::size_t p = panelsNamed(before, change.panel, side).front();
    const auto back = closing(before.panels[p], changed->panels[p], change);
    if (!back) return std::nullopt;
    return proven(before, *changed, side, *back, kApply);
}

std::optional<Change> takenBack(const Pattern& before, BodySide side, const ChangeLength& change) {
    ChangeLength back = change;
    back.amountMm = -change.amountMm;
    return opposite(before, side, change, back, applied<ChangeLength, changeLength>);
}

std::optional<Change> takenBack(const Pattern& before, BodySide side, const MoveLevel& change) {
    MoveLevel back = change;
    back.upMm = -change.upMm;
    back.widerMm = -change.widerMm;
    return opposite(before, side, change, back, applied<MoveLevel, moveLevel>);
}

std::optional<Change> takenBack(const Pattern& before, BodySide side, const MoveHandle& change) {
    MoveHandle back = change;
    back.byMm = -change.byMm;
    return opposite(before, side, change, back, applied<MoveHandle, moveHandle>);
}

std::optional<Change> takenBack(const Pattern& before, BodySide side, const MoveCorner& change) {
    constexpr Kind kApply = applied<MoveCorner, moveCorner>;
    const auto changed = after(before, side, change, kApply);
    if (!changed) return std::nullopt;
    const std::size_t p = panelsNamed(before, change.panel, side).front();
    const std::size_t e = *edgeNamed(before.panels[p], change.edge);
    const CornerMove move = cornerMoveOf(before.panels[p].edges[e], change.end, change.byMm);
    MoveCorner back = change;
    back.byMm = vectorOf(changed->panels[p].edges[e], change.end, {-move.outMm, -move.inwardMm});
    return proven(before, *changed, side, back, kApply);
}

std::optional<Change> takenBack(const Pattern& before, BodySide side, const ReshapeEdge& change) {
    constexpr Kind kApply = applied<ReshapeEdge, reshapeEdge>;
    const auto changed = after(before, side, change, kApply);
    if (!changed) return std::nullopt;
    const LineOfHalf half = linesOfHalves(before, side, change.line).front();
    std::vector<AmountAt> readings;
    for (const LineAmount& each : change.amounts)
        readings.push_back({*positionOf(before, half, each.place), each.amountMm});
    const AmountCurve curve(std::move(readings), change.towardsBack, change.towardsFront);
    constexpr double kEndRunMm = 5;
    ReshapeEdge lineBack{change.line, {}, {kEndRunMm}, {kEndRunMm}};
    for (const PanelOnLine& each : half.panels)
        readBack(before, *changed, each, curve, lineBack.amounts);
    if (lineBack.amounts.empty()) return std::nullopt;
    return proven(before, *changed, side, lineBack, kApply);
}

}  // namespace coutil
