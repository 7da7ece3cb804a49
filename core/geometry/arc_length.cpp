#include "core/geometry/arc_length.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/geometry/gauss_rule.h"
#include "core/geometry/tolerances.h"

// How the error is known beforehand. The derivative z'(t) of a part, as a quadratic with Bezier
// coefficients d0, d1, d2, differs from m = (d0 + 2 d1 + d2) / 4 by at most
// r (|t| + |1-t|)^2, r = max |d_i - m|, for complex t too. |t| + |1-t| = s is an ellipse with foci
// 0 and 1. While r s^2 < |m| the speed sqrt(z'(t) conj(z'(conj t))) has no branch point inside, and
// is below 2 |m|, so by Trefethen (Is Gauss Quadrature Better than Clenshaw-Curtis?, 2008, theorem
// 4.5) N points err by at most (64/15) |m| rho^-2N / (1 - rho^-2), rho = s + sqrt(s^2 - 1):
//   N = 16, s = 3/2: 2e-13 |m|;  N = 8, s = 7/2: 2e-13 |m|,
// that is below 1e-9 mm for parts that add up to 2 m. Parts that vary more are halved.
namespace coutil {

namespace {

constexpr double kMostVariation16 = 1 / (1.5 * 1.5);
constexpr double kMostVariation8 = 1 / (3.5 * 3.5);

// The derivative of a part with respect to its own parameter 0..1, in Bezier form.
struct Hodograph {
    Vector d0, d1, d2;
};

Hodograph hodographOf(const Cubic& c) {
    return {3 * (c.p1 - c.p0), 3 * (c.p2 - c.p1), 3 * (c.p3 - c.p2)};
}

// Speeds are summed in two lanes: the square roots go through the processor in pairs.
template <int N>
double gaussLengthMm(const Hodograph& h, const GaussRule<N>& rule) {
    const Vector linear = 2 * (h.d1 - h.d0);
    const Vector quadratic = h.d0 - 2 * h.d1 + h.d2;
    using Lanes = Eigen::Array2d;
    Lanes sum = Lanes::Zero();
    for (std::size_t i = 0; i < N; i += 2) {
        const Lanes t(rule.points[i], rule.points[i + 1]);
        const Lanes dx = h.d0.x() + t * (linear.x() + t * quadratic.x());
        const Lanes dy = h.d0.y() + t * (linear.y() + t * quadratic.y());
        sum += Lanes(rule.weights[i], rule.weights[i + 1]) * (dx * dx + dy * dy).sqrt();
    }
    return sum[0] + sum[1];
}

double hodographLengthMm(const Hodograph& h) {
    const Vector mean = (h.d0 + 2 * h.d1 + h.d2) / 4;
    const double variation = std::max(
        {(h.d0 - mean).squaredNorm(), (h.d1 - mean).squaredNorm(), (h.d2 - mean).squaredNorm()});
    const double size = mean.squaredNorm();
    if (variation <= kMostVariation8 * kMostVariation8 * size) return gaussLengthMm(h, kGauss8);
    if (variation <= kMostVariation16 * kMostVariation16 * size) return gaussLengthMm(h, kGauss16);
    // The part is no longer than |m| + r; near a cusp halving ends here. (So it does for numbers
    // that are none, which are not above anything.)
    constexpr double kShortest = tolerance::kShortestMeasuredMm;
    if (!(size + variation > kShortest * kShortest / 4) || !std::isfinite(size + variation)) {
        return gaussLengthMm(h, kGauss16);
    }
    const Vector left = (h.d0 + h.d1) / 2;
    const Vector right = (h.d1 + h.d2) / 2;
    const Vector middle = (left + right) / 2;
    return hodographLengthMm({h.d0 / 2, left / 2, middle / 2}) +
           hodographLengthMm({middle / 2, right / 2, h.d2 / 2});
}

}  // namespace

double lengthMm(const Cubic& c) { return hodographLengthMm(hodographOf(c)); }

double partLengthMm(const Cubic& c, double t0, double t1) {
    const double width = t1 - t0;
    const Vector at0 = derivativeAt(c, t0);
    const Vector at1 = derivativeAt(c, t1);
    const Vector middle = at0 + width / 2 * secondDerivativeAt(c, t0);
    return hodographLengthMm({width * at0, width * middle, width * at1});
}

double parameterAtLength(const Cubic& c, double fromStartMm, double totalMm) {
    if (!(fromStartMm > 0)) return 0;
    if (fromStartMm >= totalMm) return 1;
    constexpr int kMostSteps = 100;
    double low = 0;
    double high = 1;
    double t = fromStartMm / totalMm;
    // Only the stretch between two guesses is measured anew, and it shrinks quadratically.
    double missingMm = fromStartMm - partLengthMm(c, 0, t);
    for (int step = 0; step < kMostSteps && std::abs(missingMm) > tolerance::kAlongPathMm; ++step) {
        (missingMm > 0 ? low : high) = t;
        const double speed = derivativeAt(c, t).norm();
        double next = t + missingMm / speed;
        if (!(next > low && next < high)) next = low + (high - low) / 2;
        if (next == t) break;
        missingMm -= next > t ? partLengthMm(c, t, next) : -partLengthMm(c, next, t);
        t = next;
    }
    return t;
}

}  // namespace coutil
