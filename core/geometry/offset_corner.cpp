#include "core/geometry/offset_corner.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/geometry/corner_shape.h"
#include "core/geometry/cross_product.h"
#include "core/geometry/tolerances.h"

namespace coutil {

namespace {

// How far from the corner the allowance reaches that was cut off between `cut`, a point of the
// offset from points[k] to points[k + 1], and the corner: it may have covered more than what stands
// there.
double cutOffReach(const OffsetChain& chain, std::size_t k, const Point& cut, const Point& corner) {
    const Vector step = chain.points[k + 1] - chain.points[k];
    const double share = std::clamp(step.dot(cut - chain.points[k]) / step.squaredNorm(), 0.0, 1.0);
    const Point foot = chain.feet[k] + share * (chain.feet[k + 1] - chain.feet[k]);
    return (foot - corner).norm() + chain.widthMm;
}

enum class Turn { straight, towardsPanel, awayFromPanel };

Turn turnBetween(const OffsetChain& first, const OffsetChain& second) {
    const double sine = crossProduct(first.endDirection, second.startDirection);
    const bool goesOn = first.endDirection.dot(second.startDirection) > 0;
    if (std::abs(sine) < tolerance::kSmoothTurn)
        return goesOn ? Turn::straight : Turn::towardsPanel;
    return sine > 0 ? Turn::towardsPanel : Turn::awayFromPanel;
}

// The outline goes straight on or turns away from the panel. In to the corner and out again sweeps
// nothing; the offset lines cross further out and the clean-up cuts them there.
CornerJoin joinHollow(const OffsetChain& first, const OffsetChain& second, Turn turn) {
    CornerJoin join;
    join.firstKeeps = first.points.size();
    if (turn == Turn::awayFromPanel) join.through = {first.feet.back()};
    const double widest = std::max(first.widthMm, second.widthMm);
    if (first.widthMm != second.widthMm) join.reachMm = widest;
    join.sharedMm = kLongestCornerReach * widest;
    return join;
}

// The hollow corner cut where the offset lines cross, so that the allowance of one side of a notch
// does not reach through the panel beyond the other.
CornerJoin joinHollowAtCrossing(const OffsetChain& first, const OffsetChain& second) {
    CornerJoin join = joinHollow(first, second, Turn::awayFromPanel);
    const std::vector<Point> backwards(first.points.rbegin(), first.points.rend());
    const auto crossing = firstCrossing(backwards, second.points);
    if (!crossing) return join;
    join.firstKeeps = first.points.size() - 1 - crossing->onFirst.segment;
    join.secondFrom = crossing->onSecond.segment + 1;
    join.through = {crossing->onFirst.at};
    const double crossingMm = (crossing->onFirst.at - first.feet.back()).norm();
    join.sharedMm = std::min(join.sharedMm, std::max({crossingMm, first.widthMm, second.widthMm}));
    return join;
}

// Whether p lies left of the nearest side of a chain, or on it.
bool liesLeftOf(const std::vector<Point>& chain, const Point& p) {
    double nearest2 = std::numeric_limits<double>::max();
    bool isLeft = true;
    for (std::size_t k = 0; k + 1 < chain.size(); ++k) {
        const Vector side = chain[k + 1] - chain[k];
        const double length2 = side.squaredNorm();
        if (length2 == 0) continue;
        const double share = std::clamp((p - chain[k]).dot(side) / length2, 0.0, 1.0);
        const double distance2 = (p - chain[k] - share * side).squaredNorm();
        if (distance2 >= nearest2) continue;
        nearest2 = distance2;
        isLeft = crossProduct(side, p - chain[k]) >= -tolerance::kSamePointMm * side.norm();
    }
    return isLeft;
}

// Where an edge bulges strongly next to the corner, the line that cuts its allowance back could run
// into the panel.
bool cutsIntoPanel(const OffsetChain& first, const OffsetChain& second, const CornerJoin& join) {
    std::vector<Point> line{first.points[join.firstKeeps - 1]};
    line.insert(line.end(), join.through.begin(), join.through.end());
    line.push_back(second.points[join.secondFrom]);
    const auto isCut = [&](const Point& foot) { return !liesLeftOf(line, foot); };
    const auto cutOff = [](std::size_t k) { return static_cast<std::ptrdiff_t>(k); };
    return std::any_of(first.feet.begin() + cutOff(join.firstKeeps), first.feet.end(), isCut) ||
           std::any_of(second.feet.begin(), second.feet.begin() + cutOff(join.secondFrom), isCut);
}

CornerJoin joinOf(const OffsetChain& first, const OffsetChain& second, const Corner& corner,
                  const CornerShape& shape, CornerTreatment treatment) {
    CornerJoin join;
    join.treatment = treatment;
    join.firstKeeps = first.points.size() - shape.firstSegment;
    join.secondFrom = shape.secondSegment;
    join.reachMm = reachOf(corner, shape);
    if (shape.firstSegment > 0) {
        const double cut =
            cutOffReach(first, join.firstKeeps - 1, shape.through.front(), corner.at);
        join.reachMm = std::max(join.reachMm, cut);
    }
    if (shape.secondSegment > 0) {
        const double cut =
            cutOffReach(second, join.secondFrom - 1, shape.through.back(), corner.at);
        join.reachMm = std::max(join.reachMm, cut);
    }
    join.sharedMm = join.reachMm;
    join.through = shape.through;
    return join;
}

}  // namespace

CornerJoin joinAtCorner(const OffsetChain& first, const OffsetChain& second,
                        CornerTreatment treatment) {
    const Turn turn = turnBetween(first, second);
    if (turn == Turn::awayFromPanel) return joinHollowAtCrossing(first, second);
    if (turn == Turn::straight) return joinHollow(first, second, turn);
    const Corner corner = cornerBetween(first, second);
    if (const auto shape = askedShape(corner, treatment)) {
        CornerJoin join = joinOf(first, second, corner, *shape, treatment);
        if (!cutsIntoPanel(first, second, join)) return join;
    }
    return joinOf(first, second, corner, bevelledShape(corner), CornerTreatment::bevelled);
}

CornerJoin joinWithoutCuts(const OffsetChain& first, const OffsetChain& second) {
    const Turn turn = turnBetween(first, second);
    if (turn != Turn::towardsPanel) return joinHollow(first, second, turn);
    const Corner corner = cornerBetween(first, second);
    return joinOf(first, second, corner, bevelledShape(corner), CornerTreatment::bevelled);
}

}  // namespace coutil
