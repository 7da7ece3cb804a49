#include "core/geometry/cubic_fit.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "core/geometry/chord_error.h"
#include "core/geometry/tolerances.h"

// With end points and end directions fixed, a cubic has two unknowns left, the lengths of its two
// arms. For given parameters of the chain's points the best arms solve two linear equations; then
// every parameter moves to the foot of the perpendicular, and so on in turn. Gaps along the curve
// count little from the second round on, as the parameters will follow: that makes the rounds
// converge like Gauss-Newton instead of creeping.
namespace coutil {

namespace {

std::vector<double> chordParameters(std::span<const Point> chain) {
    std::vector<double> parameters{0};
    for (std::size_t i = 1; i < chain.size(); ++i) {
        parameters.push_back(parameters.back() + (chain[i] - chain[i - 1]).norm());
    }
    const double total = parameters.back();
    for (double& t : parameters) t /= total;
    return parameters;
}

// Sums of the normal equations for the two arms.
struct ArmSums {
    double aa = 0;
    double ab = 0;
    double bb = 0;
    double ar = 0;
    double br = 0;

    // Adds one point; gaps along the unit vector `along` weigh `weight`, gaps across it 1.
    void add(const Vector& a, const Vector& b, const Vector& rest, const Vector& along,
             double weight) {
        const auto dot = [&](const Vector& v, const Vector& w) {
            return v.dot(w) - (1 - weight) * v.dot(along) * w.dot(along);
        };
        aa += dot(a, a);
        ab += dot(a, b);
        bb += dot(b, b);
        ar += dot(a, rest);
        br += dot(b, rest);
    }
};

Cubic withBestArms(std::span<const Point> chain, const std::vector<double>& parameters,
                   const Vector& startDirection, const Vector& endDirection, const Cubic* before) {
    constexpr double kWeightAlong = 0.01;
    const Point& p0 = chain.front();
    const Point& p3 = chain.back();
    ArmSums sums;
    for (std::size_t i = 1; i + 1 < chain.size(); ++i) {
        const double t = parameters[i];
        const double u = 1 - t;
        const Vector rest = chain[i] - (u * u * (1 + 2 * t) * p0 + t * t * (3 - 2 * t) * p3);
        const Vector along = before != nullptr ? tangentAt(*before, t) : Vector(Vector::Zero());
        sums.add(3 * u * u * t * startDirection, -3 * u * t * t * endDirection, rest, along,
                 kWeightAlong);
    }
    const double determinant = sums.aa * sums.bb - sums.ab * sums.ab;
    const double third = (p3 - p0).norm() / 3;
    double startArm = third;
    double endArm = third;
    if (determinant > tolerance::kDependentShare * sums.aa * sums.bb) {
        startArm = (sums.ar * sums.bb - sums.br * sums.ab) / determinant;
        endArm = (sums.br * sums.aa - sums.ar * sums.ab) / determinant;
    }
    // An arm pointing backwards would put a loop at the end.
    if (!(startArm > 0)) startArm = third;
    if (!(endArm > 0)) endArm = third;
    return {p0, p0 + startArm * startDirection, p3 - endArm * endDirection, p3};
}

// One Newton step of every inner parameter towards the nearest place; false if they get out of
// order.
bool moveToFeet(const Cubic& c, std::span<const Point> chain, std::vector<double>& parameters) {
    for (std::size_t i = 1; i + 1 < chain.size(); ++i) {
        const double t = parameters[i];
        const Vector gap = pointAt(c, t) - chain[i];
        const Vector first = derivativeAt(c, t);
        const double slope = first.squaredNorm() + gap.dot(secondDerivativeAt(c, t));
        if (slope > 0) parameters[i] = t - gap.dot(first) / slope;
        if (!(parameters[i] > parameters[i - 1])) return false;
    }
    return parameters[parameters.size() - 2] < 1 || parameters.size() == 2;
}

// Between two neighbours the curve leaves the chain by no more than it does at the worse of them,
// plus what it leaves its own chord.
double boundMm(const Cubic& c, std::span<const Point> chain,
               const std::vector<double>& parameters) {
    double bound = 0;
    double gapBefore = 0;
    Point before = chain.front();
    for (std::size_t i = 1; i < chain.size(); ++i) {
        const Point here = pointAt(c, parameters[i]);
        const double gap = (here - chain[i]).norm();
        bound = std::max(bound,
                         std::max(gap, gapBefore) +
                             chordErrorBoundMm(c, parameters[i - 1], parameters[i], before, here));
        gapBefore = gap;
        before = here;
    }
    return bound;
}

}  // namespace

std::optional<Cubic> cubicNear(std::span<const Point> chain, const Vector& startDirection,
                               const Vector& endDirection, double toleranceMm) {
    constexpr int kMostRounds = 8;
    // Rounds gain little by little; a fit this far off after a few will not come in.
    constexpr int kFewRounds = 3;
    constexpr double kHopelessShare = 8;
    auto parameters = chordParameters(chain);
    Cubic c;
    for (int round = 0; round < kMostRounds; ++round) {
        c = withBestArms(chain, parameters, startDirection, endDirection, round > 0 ? &c : nullptr);
        if (!moveToFeet(c, chain, parameters)) return std::nullopt;
        const double bound = boundMm(c, chain, parameters);
        if (bound <= toleranceMm) return c;
        if (round >= kFewRounds && bound > kHopelessShare * toleranceMm) return std::nullopt;
    }
    return std::nullopt;
}

}  // namespace coutil
