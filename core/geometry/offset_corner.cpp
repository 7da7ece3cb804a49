#include "core/geometry/offset_corner.h"

#include <algorithm>
#include <cmath>
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
    const Vector bisector = (ofNormals.squaredNorm() > ofProlongations.squaredNorm()
                                 ? ofNormals
                                 : ofProlongations)
                                .normalized();
    const double height = std::min(corner.first.widthMm, corner.second.widthMm);
    return {0, 0,
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
    const Point onFold = other.points[k] - outside / (inside - outside) *
                                               (other.points[k + 1] - other.points[k]);
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

// The outline goes straight on or turns away from the panel. In to the corner and out again sweeps
// nothing; the offset lines cross further out and the clean-up cuts them there.
CornerJoin joinHollow(const OffsetChain& first, const OffsetChain& second, bool isStraight) {
    CornerJoin join;
    join.firstKeeps = first.points.size();
    if (!isStraight) join.through = {first.feet.back()};
    if (first.widthMm != second.widthMm) join.reachMm = std::max(first.widthMm, second.widthMm);
    return join;
}

}  // namespace

CornerJoin joinAtCorner(const OffsetChain& first, const OffsetChain& second,
                        CornerTreatment treatment) {
    const double turn = crossProduct(first.endDirection, second.startDirection);
    const bool goesOn = first.endDirection.dot(second.startDirection) > 0;
    const bool isStraight = goesOn && std::abs(turn) < tolerance::kSmoothTurn;
    if (isStraight || (turn < 0 && (goesOn || turn < -tolerance::kSmoothTurn))) {
        return joinHollow(first, second, isStraight);
    }
    const double widest = std::max(first.widthMm, second.widthMm);
    const double limit = kLongestCornerReach * widest;
    const Corner corner{first.feet.back(), armAtEnd(first, limit), armAtStart(second, limit),
                        widest, limit};
    auto shape = askedShape(corner, treatment);
    if (!shape) {
        shape = bevelledShape(corner);
        treatment = CornerTreatment::bevelled;
    }
    CornerJoin join;
    join.treatment = treatment;
    join.firstKeeps = first.points.size() - shape->firstSegment;
    join.secondFrom = shape->secondSegment;
    join.reachMm = reachOf(corner, *shape);
    join.through = std::move(shape->through);
    return join;
}

}  // namespace coutil
