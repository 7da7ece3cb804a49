#include "core/block/suppression_curve.h"

#include <algorithm>
#include <cmath>

namespace coutil {

double SuppressionCurve::valueMmAt(double heightMm) const {
    if (knots.empty()) return 0;
    if (heightMm <= knots.front().heightMm)
        return knots.front().valueMm + (heightMm - knots.front().heightMm) * knots.front().slope;
    if (heightMm >= knots.back().heightMm)
        return knots.back().valueMm + (heightMm - knots.back().heightMm) * knots.back().slope;
    const auto upper =
        std::upper_bound(knots.begin(), knots.end(), heightMm,
                         [](double h, const CurveKnot& knot) { return h < knot.heightMm; });
    const CurveKnot& b = *upper;
    const CurveKnot& a = *(upper - 1);
    const double h = b.heightMm - a.heightMm;
    const double t = (heightMm - a.heightMm) / h;
    const double s = 1 - t;
    return s * s * (1 + 2 * t) * a.valueMm + t * t * (3 - 2 * t) * b.valueMm +
           h * t * s * (s * a.slope - t * b.slope);
}

}  // namespace coutil
