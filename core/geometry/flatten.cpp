#include <algorithm>
#include <cmath>

#include "core/geometry/chord_error.h"
#include "core/geometry/path.h"

namespace coutil {

namespace {

// Where the chord that starts at t0 may end: the guess shrinks until the bound holds.
double nextStop(const Cubic& c, double t0, double guess, double toleranceMm) {
    constexpr double kNarrowest = 1e-6;
    constexpr double kJustBelow = 0.97;
    const Point start = pointAt(c, t0);
    double h = std::min(guess, 1 - t0);
    for (;;) {
        const double t1 = h >= 1 - t0 ? 1 : t0 + h;
        const double error = chordErrorBoundMm(c, t0, t1, start, pointAt(c, t1));
        if (!(error > toleranceMm) || h < kNarrowest || !std::isfinite(error)) return t1;
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
