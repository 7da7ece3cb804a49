#include <algorithm>
#include <limits>

#include "core/geometry/bernstein_roots.h"
#include "core/geometry/path.h"

namespace coutil {

namespace {

// Squared distance from a point to a box, 0 inside.
double squaredDistance(const Box& box, const Point& p) {
    return (p - p.cwiseMax(box.lowest).cwiseMin(box.highest)).squaredNorm();
}

Box controlBox(const Cubic& c) {
    Box box;
    for (const Point* p : {&c.p0, &c.p1, &c.p2, &c.p3}) box.include(*p);
    return box;
}

// (z(t) - p) . z'(t) / 3 in Bernstein form: its roots are the feet of perpendiculars. The products
// of the Bernstein polynomials of degree 3 and 2 carry C(3,i) C(2,j) / C(5,i+j).
Bernstein<5> footPolynomial(const Cubic& c, const Point& p) {
    const std::array<Vector, 4> from{c.p0 - p, c.p1 - p, c.p2 - p, c.p3 - p};
    const std::array<Vector, 3> leg{c.p1 - c.p0, c.p2 - c.p1, c.p3 - c.p2};
    constexpr std::array<double, 4> kThree{1, 3, 3, 1};
    constexpr std::array<double, 3> kTwo{1, 2, 1};
    constexpr std::array<double, 6> kFive{1, 5, 10, 10, 5, 1};
    Bernstein<5> foot{};
    for (std::size_t i = 0; i < 4; ++i) {
        for (std::size_t j = 0; j < 3; ++j) {
            foot[i + j] += kThree[i] * kTwo[j] / kFive[i + j] * from[i].dot(leg[j]);
        }
    }
    return foot;
}

}  // namespace

ClosestPlace closestOn(const Path& path, const Point& point) {
    ClosestPlace best;
    double bestSquared = std::numeric_limits<double>::infinity();
    const auto consider = [&](std::size_t piece, double t, const Point& place) {
        const double squared = (place - point).squaredNorm();
        if (squared >= bestSquared) return;
        bestSquared = squared;
        best.position = {piece, t};
        best.point = place;
    };
    // All ends first: they bound the distance, so that most pieces need no closer look.
    for (std::size_t i = 0; i < path.pieces.size(); ++i) {
        consider(i, 0, path.pieces[i].p0);
        consider(i, 1, path.pieces[i].p3);
    }
    for (std::size_t i = 0; i < path.pieces.size(); ++i) {
        const Cubic& c = path.pieces[i];
        if (squaredDistance(controlBox(c), point) >= bestSquared) continue;
        for (const double t : rootsOf<5>(footPolynomial(c, point))) consider(i, t, pointAt(c, t));
    }
    best.distanceMm = std::sqrt(bestSquared);
    return best;
}

}  // namespace coutil
