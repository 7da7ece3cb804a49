#include "core/geometry/contact_refinement.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/closest_on_piece.h"
#include "core/geometry/cross_product.h"
#include "core/geometry/tolerances.h"

namespace coutil {

namespace {

// Solves the two equations slope * step = -f and moves by step. False if their determinant is not
// above `dependent` or the step leaves the neighbourhood of the pieces.
bool moveBy(const Eigen::Matrix2d& slope, const Vector& f, double dependent, ParameterPair& at,
            double& step) {
    constexpr double kFarthest = 2;
    const double determinant = slope(0, 0) * slope(1, 1) - slope(0, 1) * slope(1, 0);
    if (!(std::abs(determinant) > dependent)) return false;
    const double first = (-f.x() * slope(1, 1) + f.y() * slope(0, 1)) / determinant;
    const double second = (-f.y() * slope(0, 0) + f.x() * slope(1, 0)) / determinant;
    at.first += first;
    at.second += second;
    step = std::abs(first) + std::abs(second);
    return std::abs(at.first) < kFarthest && std::abs(at.second) < kFarthest;
}

constexpr int kMostSteps = 12;

// True once a step is small, or no longer shrinks because rounding is all that is left of it.
bool isSettled(double step, double stepBefore) {
    return step < tolerance::kSettledStep ||
           (step < tolerance::kNeighbourParameter && step > stepBefore / 4);
}

// Where the two pieces run in parallel, side by side: the touching point of curves that touch.
std::optional<ParameterPair> parallelNear(const Cubic& first, const Cubic& second,
                                          ParameterPair at) {
    double stepBefore = 1;
    for (int i = 0; i < kMostSteps; ++i) {
        const Vector gap = pointAt(first, at.first) - pointAt(second, at.second);
        const Vector d1 = derivativeAt(first, at.first);
        const Vector d2 = derivativeAt(second, at.second);
        const Vector dd1 = secondDerivativeAt(first, at.first);
        const Vector dd2 = secondDerivativeAt(second, at.second);
        Eigen::Matrix2d slope;
        slope << crossProduct(dd1, d2), crossProduct(d1, dd2), d1.squaredNorm() + gap.dot(dd1),
            -d2.dot(d1);
        // The determinant is the difference of the curvatures times these speeds.
        const double speeds = std::pow(d1.norm(), 3) * d2.squaredNorm();
        double step = 0;
        if (!moveBy(slope, {crossProduct(d1, d2), gap.dot(d1)},
                    tolerance::kSameCurvaturePerMm * speeds, at, step)) {
            return std::nullopt;
        }
        if (isSettled(step, stepBefore)) return at;
        stepBefore = step;
    }
    return std::nullopt;
}

double distanceMm(const Cubic& first, const Cubic& second, const ParameterPair& at) {
    return (pointAt(first, at.first) - pointAt(second, at.second)).norm();
}

PieceContact placeAt(const ParameterPair& at) { return {at.first, at.first, at.second, at.second}; }

// A stretch of two parts of one curve ends where one of the pieces ends.
bool endsWithAPiece(double t, double s) {
    constexpr double kNear = tolerance::kNeighbourParameter;
    return t < kNear || t > 1 - kNear || s < kNear || s > 1 - kNear;
}

bool isSharedStretch(const Cubic& first, const PieceContact& rough) {
    const double chordMm =
        (pointAt(first, rough.firstEnd) - pointAt(first, rough.firstStart)).norm();
    return chordMm > tolerance::kSamePointMm &&
           endsWithAPiece(rough.firstStart, rough.secondStart) &&
           endsWithAPiece(rough.firstEnd, rough.secondEnd);
}

// The place of a contact whose Newton steps do not settle: an end of a piece, or the middle.
ParameterPair placeWithin(const Cubic& first, const Cubic& second, const PieceContact& rough) {
    if (endsWithAPiece(rough.firstStart, rough.secondStart)) {
        return {rough.firstStart, rough.secondStart};
    }
    if (endsWithAPiece(rough.firstEnd, rough.secondEnd)) return {rough.firstEnd, rough.secondEnd};
    const double middle = (rough.firstStart + rough.firstEnd) / 2;
    return {middle, closestParameter(second, pointAt(first, middle))};
}

void appendRefined(const Cubic& first, const Cubic& second, const PieceContact& rough,
                   std::vector<PieceContact>& contacts) {
    const ParameterPair middle{(rough.firstStart + rough.firstEnd) / 2,
                               (rough.secondStart + rough.secondEnd) / 2};
    const double reach = tolerance::kNeighbourParameter + rough.firstEnd - rough.firstStart;
    const auto append = [&](const std::optional<ParameterPair>& found) {
        if (!found || std::abs(found->first - middle.first) > reach) return false;
        const auto inside = insideBoth(first, second, *found);
        if (!inside || distanceMm(first, second, *inside) > tolerance::kTouchMm) return false;
        contacts.push_back(placeAt(*inside));
        return true;
    };
    if (append(parallelNear(first, second, middle))) return;
    // Two crossings close together, perhaps.
    const bool atStart = append(crossingNear(first, second, {rough.firstStart, rough.secondStart}));
    const bool atEnd = append(crossingNear(first, second, {rough.firstEnd, rough.secondEnd}));
    if (atStart || atEnd) return;
    if (isSharedStretch(first, rough)) {
        contacts.push_back(rough);
    } else {
        contacts.push_back(placeAt(placeWithin(first, second, rough)));
    }
}

// Neighbours on both pieces; next does not start before the cluster.
bool touches(const PieceContact& cluster, const PieceContact& next) {
    const auto [low, high] = std::minmax(cluster.secondStart, cluster.secondEnd);
    const auto [nextLow, nextHigh] = std::minmax(next.secondStart, next.secondEnd);
    constexpr double kNear = tolerance::kNeighbourParameter;
    return next.firstStart <= cluster.firstEnd + kNear && nextLow <= high + kNear &&
           nextHigh >= low - kNear;
}

}  // namespace

std::optional<ParameterPair> crossingNear(const Cubic& first, const Cubic& second,
                                          const ParameterPair& guess) {
    ParameterPair at = guess;
    double stepBefore = 1;
    for (int i = 0; i < kMostSteps; ++i) {
        const Vector gap = pointAt(first, at.first) - pointAt(second, at.second);
        Eigen::Matrix2d slope;
        slope << derivativeAt(first, at.first), -derivativeAt(second, at.second);
        const double speeds = slope.col(0).norm() * slope.col(1).norm();
        double step = 0;
        if (!moveBy(slope, gap, tolerance::kParallelSine * speeds, at, step)) return std::nullopt;
        if (isSettled(step, stepBefore)) return at;
        stepBefore = step;
    }
    return std::nullopt;
}

std::optional<ParameterPair> insideBoth(const Cubic& first, const Cubic& second,
                                        const ParameterPair& pair) {
    const ParameterPair inside{std::clamp(pair.first, 0.0, 1.0), std::clamp(pair.second, 0.0, 1.0)};
    const auto isFar = [](const Cubic& c, double t0, double t1) {
        return t0 != t1 && (pointAt(c, t1) - pointAt(c, t0)).norm() > tolerance::kTouchMm;
    };
    if (isFar(first, pair.first, inside.first) || isFar(second, pair.second, inside.second)) {
        return std::nullopt;
    }
    return inside;
}

std::vector<PieceContact> refined(const Cubic& first, const Cubic& second,
                                  std::vector<PieceContact> rough) {
    std::sort(rough.begin(), rough.end(), [](const PieceContact& a, const PieceContact& b) {
        return a.firstStart < b.firstStart;
    });
    std::vector<PieceContact> clusters;
    for (const PieceContact& next : rough) {
        const auto known = std::find_if(clusters.begin(), clusters.end(),
                                        [&](const PieceContact& c) { return touches(c, next); });
        if (known == clusters.end()) {
            clusters.push_back(next);
        } else if (next.firstEnd > known->firstEnd) {
            known->firstEnd = next.firstEnd;
            known->secondEnd = next.secondEnd;
        }
    }
    std::vector<PieceContact> contacts;
    for (const PieceContact& cluster : clusters) {
        if (cluster.isStretch()) {
            appendRefined(first, second, cluster, contacts);
        } else {
            contacts.push_back(cluster);
        }
    }
    return contacts;
}

}  // namespace coutil
