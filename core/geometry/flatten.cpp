#include <algorithm>
#include <cmath>

#include "core/geometry/cross_product.h"
#include "core/geometry/path.h"

// A part of parameter width h leaves its chord, both run through at even speed, by at most
// h^2 / 8 max |z''|, and z'' of a cubic is linear: its largest value is at an end. Where the part
// moves along its chord without turning back, only the share of z'' across the chord counts.
namespace coutil {

namespace {

// A proven upper bound of the distance between the part t0..t1 and its chord, mm.
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

// Where the chord that starts at t0 may end: the guess shrinks until the bound holds.
double nextStop(const Cubic& c, double t0, double guess, double toleranceMm) {
    constexpr double kNarrowest = 1e-6;
    constexpr double kJustBelow = 0.97;
    const Point start = pointAt(c, t0);
    double h = std::min(guess, 1 - t0);
    for (;;) {
        const double t1 = h >= 1 - t0 ? 1 : t0 + h;
        const double error = chordErrorBoundMm(c, t0, t1, start, pointAt(c, t1));
        if (error <= toleranceMm || h < kNarrowest) return t1;
        h *= std::max(0.25, kJustBelow * std::sqrt(toleranceMm / error));
    }
}

void appendFlattened(const Cubic& c, double toleranceMm, std::vector<Point>& points) {
    double t = 0;
    double guess = 1;
    while (t < 1) {
        const double next = nextStop(c, t, guess, toleranceMm);
        points.push_back(next >= 1 ? c.p3 : pointAt(c, next));
        guess = 2 * (next - t);
        t = next;
    }
}

}  // namespace

std::vector<Point> flattened(const Path& path, double toleranceMm) {
    std::vector<Point> points;
    if (path.isEmpty()) return points;
    points.push_back(path.start());
    for (const Cubic& c : path.pieces) appendFlattened(c, toleranceMm, points);
    return points;
}

}  // namespace coutil
