#include "core/geometry/offset_corner.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <utility>

#include "core/geometry/cross_product.h"
#include "core/geometry/offset_arm.h"
#include "core/geometry/tolerances.h"

namespace coutil {

namespace {

// The two arms of a corner that turns towards the panel.
struct Corner {
    Point at;
    OffsetArm first;
    OffsetArm second;
    double widestMm = 0;
    double limitMm = 0;  // no point of the corner may be farther away
};

// A corner's shape: the arm segments it is tied to and the points from first to second.
struct Shape {
    std::size_t firstSegment = 0;
    std::size_t secondSegment = 0;
    std::vector<Point> through;
};

Corner cornerBetween(const OffsetChain& first, const OffsetChain& second) {
    const double widest = std::max(first.widthMm, second.widthMm);
    const double limit = kLongestCornerReach * widest;
    return {first.feet.back(), armAtEnd(first, limit), armAtStart(second, limit), widest, limit};
}

double reachOf(const Corner& corner, const Shape& shape) {
    double reach = corner.widestMm;
    for (const Point& p : shape.through) reach = std::max(reach, (p - corner.at).norm());
    return reach;
}

// Where the narrower width is 0 (a fold, a bound edge) the allowance must not pass that line's
// prolongation, so the wider arm is cut back where it does.
std::optional<Shape> cutBackAtLine(const OffsetArm& wide, const OffsetArm& line) {
    const std::vector<Point> prolongation(line.points.begin(), line.points.begin() + 2);
    const std::vector<Point> inwards(wide.points.begin() + 1, wide.points.end());
    const auto crossing = firstCrossing(inwards, prolongation);
    if (!crossing) return std::nullopt;
    return Shape{crossing->onFirst.segment + 1, 0, {crossing->onFirst.at}};
}

std::optional<Shape> mitredShape(const Corner& corner) {
    const OffsetArm& first = corner.first;
    const OffsetArm& second = corner.second;
    const double sine = crossProduct(second.beyond, first.beyond);
    if (std::abs(sine) < tolerance::kSmoothTurn) return std::nullopt;
    // first end + a * first.beyond = second end + b * second.beyond
    const Vector gap = second.points[1] - first.points[1];
    const double a = crossProduct(second.beyond, gap) / sine;
    const double b = crossProduct(first.beyond, gap) / sine;
    std::optional<Shape> shape;
    if (a >= -tolerance::kSamePointMm && b >= -tolerance::kSamePointMm) {
        shape = Shape{0, 0, {first.points[1] + a * first.beyond}};
    } else if (second.widthMm == 0) {
        shape = cutBackAtLine(first, second);
    } else if (first.widthMm == 0) {
        shape = cutBackAtLine(second, first);
        if (shape) std::swap(shape->firstSegment, shape->secondSegment);
    }
    if (shape && reachOf(corner, *shape) > corner.limitMm) shape.reset();
    return shape;
}

// How far an arm runs on until it is `heightMm` along the bisector from the corner.
Point bevelEnd(const OffsetArm& arm, const Point& corner, const Vector& bisector, double heightMm) {
    const double speed = bisector.dot(arm.beyond);
    const double missing = heightMm - bisector.dot(arm.points[1] - corner);
    if (speed < tolerance::kSmoothTurn || missing <= 0) return arm.points[1];
    return arm.points[1] + missing / speed * arm.beyond;
}

Shape bevelledShape(const Corner& corner) {
    // Both sums point along the bisector; each vanishes where the other is long.
    const Vector ofNormals = corner.first.outward + corner.second.outward;
    const Vector ofProlongations = corner.first.beyond + corner.second.beyond;
    const Vector bisector =
        (ofNormals.squaredNorm() > ofProlongations.squaredNorm() ? ofNormals : ofProlongations)
            .normalized();
    const double height = std::min(corner.first.widthMm, corner.second.widthMm);
    return {0,
            0,
            {bevelEnd(corner.first, corner.at, bisector, height),
             bevelEnd(corner.second, corner.at, bisector, height)}};
}

// The fold arm ends on the mirror image of the other arm.
std::optional<Shape> turnedBackShape(const Corner& corner, const OffsetArm& fold,
                                     const OffsetArm& other) {
    const auto side = [&](const Point& p) { return -fold.outward.dot(p - corner.at); };
    std::size_t k = 0;
    while (k + 1 < other.points.size() && side(other.points[k + 1]) <= 0) ++k;
    if (k + 1 == other.points.size() || side(other.points[k]) > 0) return std::nullopt;
    const double outside = side(other.points[k]);
    const double inside = side(other.points[k + 1]);
    const Point onFold =
        other.points[k] - outside / (inside - outside) * (other.points[k + 1] - other.points[k]);
    std::vector<Point> mirrored{onFold};
    for (std::size_t m = k + 1; m < other.points.size(); ++m) {
        mirrored.emplace_back(other.points[m] + 2 * side(other.points[m]) * fold.outward);
    }
    const auto crossing = firstCrossing(mirrored, fold.points);
    if (!crossing) return std::nullopt;
    Shape shape{crossing->onSecond.segment, k, {crossing->onFirst.at}};
    for (std::size_t m = crossing->onFirst.segment + 1; m-- > 0;) {
        shape.through.push_back(mirrored[m]);
    }
    if (reachOf(corner, shape) > corner.limitMm) return std::nullopt;
    return shape;
}

std::optional<Shape> askedShape(const Corner& corner, CornerTreatment& treatment) {
    if (treatment == CornerTreatment::turnedBackOverFirst && corner.first.widthMm > 0) {
        return turnedBackShape(corner, corner.first, corner.second);
    }
    if (treatment == CornerTreatment::turnedBackOverSecond && corner.second.widthMm > 0) {
        auto shape = turnedBackShape(corner, corner.second, corner.first);
        if (shape) {
            std::swap(shape->firstSegment, shape->secondSegment);
            std::reverse(shape->through.begin(), shape->through.end());
        }
        return shape;
    }
    if (treatment == CornerTreatment::bevelled) return bevelledShape(corner);
    treatment = CornerTreatment::mitred;
    return mitredShape(corner);
}

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
                  const Shape& shape, CornerTreatment treatment) {
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
