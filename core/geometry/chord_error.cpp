#include "core/geometry/chord_error.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/cross_product.h"

namespace coutil {

double chordErrorBoundMm(const Cubic& c, double t0, double t1, const Point& start,
                         const Point& end) {
    const double h = t1 - t0;
    const Vector second0 = secondDerivativeAt(c, t0);
    const Vector second1 = secondDerivativeAt(c, t1);
    const Vector chord = end - start;
    const Vector first0 = derivativeAt(c, t0);
    const Vector first1 = derivativeAt(c, t1);
    const bool advances = chord.dot(first0) >= 0 && chord.dot(first1) >= 0 &&
                          chord.dot(first0 + h / 2 * second0) >= 0 && chord.squaredNorm() > 0;
    const double across = advances
                              ? std::max(std::abs(crossProduct(chord, second0)),
                                         std::abs(crossProduct(chord, second1))) /
                                    chord.norm()
                              : std::sqrt(std::max(second0.squaredNorm(), second1.squaredNorm()));
    return h * h / 8 * across;
}

}  // namespace coutil
