// Raising and lowering the top or bottom line.
#include <algorithm>
#include <cmath>
#include <optional>

#include "core/alterations/alteration_kinds.h"
#include "core/alterations/change_problem.h"
#include "core/alterations/draw_lines.h"
#include "core/alterations/find_places.h"
#include "core/alterations/line_of_half.h"
#include "core/alterations/run_on_curve.h"
#include "core/alterations/settle.h"

namespace coutil {
namespace {

constexpr const char* kKind = "reshape_edge";
constexpr double kMostAmountMm = 200;
constexpr double kShortestFadeMm = 5;

std::string nameOf(const LinePlace& place) { return place.seam.empty() ? place.panel : place.seam; }

Problems check(const ReshapeEdge& change) {
    const std::string line(keyOf(change.line));
    for (const Fade& fade : {change.towardsFront, change.towardsBack}) {
        if (fade.overMm && !(isSoundMm(*fade.overMm) && *fade.overMm >= kShortestFadeMm))
            return badValue(kKind, line);
    }
    if (change.amounts.empty()) return badValue(kKind, line);
    for (const LineAmount& each : change.amounts) {
        if (!std::isfinite(each.amountMm) || !isSoundMm(each.place.alongMm))
            return badValue(kKind, nameOf(each.place));
        if (std::abs(each.amountMm) > kMostAmountMm)
            return tooLarge(kKind, nameOf(each.place), std::abs(each.amountMm), kMostAmountMm);
    }
    return {};
}

Problems moveEnds(Pattern& pattern, EdgeLine line, const LineOfHalf& half,
                  const AmountCurve& curve) {
    for (const PanelOnLine& each : half.panels) {
        const LineInPanel& place = each.place;
        for (const auto& [e, atMm] :
             {std::pair{place.front, each.fromMm}, std::pair{place.back, each.toMm}}) {
            Edge& edge = pattern.panels[each.panel].edges[e];
            const double upMm = curve.at(atMm);
            if (upMm == 0) continue;
            const auto moved = edge.waistMarkAtMm ? endMoved(upwardOf(edge), line,
                                                             line == EdgeLine::top ? upMm : -upMm)
                                                  : std::nullopt;
            if (!moved) return breaksPanel(kKind, edge.name, pattern.panels[each.panel].name);
            setUpward(edge, *moved);
        }
    }
    return {};
}

void moveLine(const Pattern& before, Pattern& pattern, const PanelOnLine& each,
              const AmountCurve& curve) {
    const Panel& old = before.panels[each.panel];
    Panel& panel = pattern.panels[each.panel];
    if (curve.lowestMm() >= each.toMm || curve.highestMm() <= each.fromMm) return;
    const Path raised = raisedLine(old, each, curve);
    const PanelCorners corners = cornersOf(panel, each.place);
    setRightwards(panel, each.place,
                  carriedLine(raised, corners.front, corners.back,
                              endDirection(before, pattern, each, raised, true),
                              endDirection(before, pattern, each, raised, false)));
}

}  // namespace

Problems reshapeEdge(Pattern& pattern, BodySide side, const ReshapeEdge& change) {
    if (Problems problems = check(change); !problems.empty()) return problems;
    Pattern changed = pattern;
    for (const LineOfHalf& half : linesOfHalves(pattern, side, change.line)) {
        std::vector<AmountAt> readings;
        for (const LineAmount& each : change.amounts) {
            const auto atMm = positionOf(pattern, half, each.place);
            if (!atMm) return unfit(kKind, nameOf(each.place));
            readings.push_back({*atMm, each.amountMm});
        }
        const AmountCurve curve(std::move(readings), change.towardsBack, change.towardsFront);
        if (Problems problems = moveEnds(changed, change.line, half, curve); !problems.empty())
            return problems;
        for (const PanelOnLine& each : half.panels) moveLine(pattern, changed, each, curve);
    }
    evenLinesAcrossSeams(changed);
    refreshFigures(pattern, changed);
    pattern = std::move(changed);
    return {};
}

}  // namespace coutil
