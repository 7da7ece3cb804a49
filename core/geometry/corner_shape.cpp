#include "core/geometry/corner_shape.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/geometry/cross_product.h"
#include "core/geometry/tolerances.h"

namespace coutil {

namespace {

// Where the narrower width is 0 (a fold, a bound edge) the allowance must not pass that line's
// prolongation, so the wider arm is cut back where it does.
std::optional<CornerShape> cutBackAtLine(const OffsetArm& wide, const OffsetArm& line) {
    const std::vector<Point> prolongation(line.points.begin(), line.points.begin() + 2);
    const std::vector<Point> inwards(wide.points.begin() + 1, wide.points.end());
    const auto crossing = firstCrossing(inwards, prolongation);
    if (!crossing) return std::nullopt;
    return CornerShape{crossing->onFirst.segment + 1, 0, {crossing->onFirst.at}};
}

std::optional<CornerShape> mitredShape(const Corner& corner) {
    const OffsetArm& first = corner.first;
    const OffsetArm& second = corner.second;
    const double sine = crossProduct(second.beyond, first.beyond);
    if (std::abs(sine) < tolerance::kSmoothTurn) return std::nullopt;
    // first end + a * first.beyond = second end + b * second.beyond
    const Vector gap = second.points[1] - first.points[1];
    const double a = crossProduct(second.beyond, gap) / sine;
    const double b = crossProduct(first.beyond, gap) / sine;
    std::optional<CornerShape> shape;
    if (a >= -tolerance::kSamePointMm && b >= -tolerance::kSamePointMm) {
        shape = CornerShape{0, 0, {first.points[1] + a * first.beyond}};
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

// The fold arm ends on the mirror image of the other arm.
std::optional<CornerShape> turnedBackShape(const Corner& corner, const OffsetArm& fold,
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
    CornerShape shape{crossing->onSecond.segment, k, {crossing->onFirst.at}};
    for (std::size_t m = crossing->onFirst.segment + 1; m-- > 0;) {
        shape.through.push_back(mirrored[m]);
    }
    if (reachOf(corner, shape) > corner.limitMm) return std::nullopt;
    return shape;
}

}  // namespace

Corner cornerBetween(const OffsetChain& first, const OffsetChain& second) {
    const double widest = std::max(first.widthMm, second.widthMm);
    const double limit = kLongestCornerReach * widest;
    return {first.feet.back(), armAtEnd(first, limit), armAtStart(second, limit), widest, limit};
}

double reachOf(const Corner& corner, const CornerShape& shape) {
    double reach = corner.widestMm;
    for (const Point& p : shape.through) reach = std::max(reach, (p - corner.at).norm());
    return reach;
}

CornerShape bevelledShape(const Corner& corner) {
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

std::optional<CornerShape> askedShape(const Corner& corner, CornerTreatment& treatment) {
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

}  // namespace coutil
