// Taking in and letting out seams: ShapeSeam.
#include <algorithm>
#include <cmath>
#include <string>

#include "core/alterations/alteration_kinds.h"
#include "core/alterations/find_places.h"
#include "core/alterations/move_edge.h"
#include "core/alterations/settle.h"
#include "core/alterations/shape_parts.h"
#include "core/pattern/panel_key.h"

namespace coutil {
namespace {

// More than any seam of a body ever takes; beyond it a figure was mistyped.
constexpr double kMostAmountMm = 200;
// A reading may lie this far past the end of its seam: tapes slip, and on a block of other
// measurements the seam ends elsewhere.
constexpr double kPastEndMm = 30;
// A shorter fade is a kink.
constexpr double kShortestFadeMm = 5;

// By how much one edge is to move.
struct ShiftOfEdge {
    EdgeRef edge;
    EdgeShift shift;
    std::string seam;
};

Problem problemOf(ProblemCode code, const ShapeSeam& shape) {
    return {.code = code, .subject = "shape_seam", .detail = shape.seam};
}

EdgeShift& shiftOf(std::vector<ShiftOfEdge>& shifts, const EdgeRef& edge, const std::string& seam) {
    const auto found = std::ranges::find(shifts, edge, &ShiftOfEdge::edge);
    if (found != shifts.end()) return found->shift;
    shifts.push_back({edge, EdgeShift{}, seam});
    return shifts.back().shift;
}

bool isNumber(const ShapeSeam& shape) {
    const auto isFine = [](const Fade& fade) {
        return !fade.overMm || (*fade.overMm >= kShortestFadeMm && std::isfinite(*fade.overMm));
    };
    return !shape.amounts.empty() && isFine(shape.up) && isFine(shape.down) &&
           shape.frontPart >= 0 && shape.frontPart <= 1 &&
           std::ranges::all_of(shape.amounts, [](const AmountAt& reading) {
               return std::isfinite(reading.amountMm) && std::isfinite(reading.positionMm);
           });
}

bool liesOn(const Edge& edge, const ShapeSeam& shape) {
    if (!edge.waistMarkAtMm) return false;
    const SeamLengths lengths = seamLengthsOf(edge);
    return std::ranges::all_of(shape.amounts, [&](const AmountAt& reading) {
        return reading.positionMm <= lengths.aboveWaistMm + kPastEndMm &&
               reading.positionMm >= -lengths.belowWaistMm - kPastEndMm;
    });
}

}  // namespace

std::vector<PartOfEdge> partsOf(const Pattern& pattern, BodySide side, const ShapeSeam& shape) {
    std::vector<PartOfEdge> parts;
    if (isCentreName(shape.seam)) {
        const double part = side == BodySide::both ? 0.5 : 1;
        for (const EdgeRef& edge : edgesNamed(pattern, shape.seam, side))
            parts.push_back({edge, part});
        return parts;
    }
    for (const std::size_t s : seamsNamed(pattern, shape.seam, side)) {
        parts.push_back({pattern.seams[s].front, shape.frontPart});
        parts.push_back({pattern.seams[s].back, 1 - shape.frontPart});
    }
    return parts;
}

Problems checkShapeSeam(const Pattern& pattern, BodySide side, const ShapeSeam& shape) {
    if (!isNumber(shape)) return {problemOf(ProblemCode::alterationBadValue, shape)};
    for (const AmountAt& reading : shape.amounts) {
        if (std::abs(reading.amountMm) <= kMostAmountMm) continue;
        Problem problem = problemOf(ProblemCode::alterationTooLarge, shape);
        problem.figures = {{"value", reading.amountMm}, {"limit", kMostAmountMm}};
        return {problem};
    }
    const auto parts = partsOf(pattern, side, shape);
    const bool isThere = !parts.empty() && std::ranges::all_of(parts, [&](const PartOfEdge& part) {
        return liesOn(edgeAt(pattern, part.edge), shape);
    });
    if (!isThere) return {problemOf(ProblemCode::alterationUnfit, shape)};
    return {};
}

Problems shapeSeams(Pattern& pattern, const std::vector<ShapeSeamOnSide>& shapes) {
    std::vector<ShiftOfEdge> shifts;
    for (const auto& [side, shape] : shapes) {
        Problems problems = checkShapeSeam(pattern, side, *shape);
        if (!problems.empty()) return problems;
        const AmountCurve curve(shape->amounts, shape->up, shape->down);
        for (const PartOfEdge& part : partsOf(pattern, side, *shape))
            shiftOf(shifts, part.edge, shape->seam).add(part.part, curve);
    }
    Pattern moved = pattern;
    for (const ShiftOfEdge& each : shifts) {
        if (each.shift.isNothing()) continue;
        Edge& edge = moved.panels[each.edge.panel].edges[each.edge.edge];
        UpwardEdge upwards = upwardOf(edge);
        auto path = movedAlongNormal(upwards, each.shift);
        if (!path) {
            return {{.code = ProblemCode::alterationBreaksPanel,
                     .subject = "shape_seam",
                     .detail = each.seam,
                     .panel = panelKey(pattern.panels[each.edge.panel])}};
        }
        upwards.path = *std::move(path);
        edge.path = edge.runsUp ? std::move(upwards.path) : reversed(upwards.path);
    }
    settle(pattern, moved);
    pattern = std::move(moved);
    return {};
}

Problems shapeSeam(Pattern& pattern, BodySide side, const ShapeSeam& shape) {
    return shapeSeams(pattern, {{side, &shape}});
}

}  // namespace coutil
