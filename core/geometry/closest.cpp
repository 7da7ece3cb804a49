#include <algorithm>
#include <limits>

#include "core/geometry/bernstein_roots.h"
#include "core/geometry/closest_on_piece.h"
#include "core/geometry/path.h"

namespace coutil {

namespace {

// Squared distance from a point to a box, 0 inside.
double squaredDistance(const Box& box, const Point& p) {
    return (p - p.cwiseMax(box.lowest).cwiseMin(box.highest)).squaredNorm();
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

// Calls visit(t, point, squared distance) for every foot of a perpendicular inside the piece.
template <class Visit>
void visitFeet(const Cubic& c, const Point& point, Visit visit) {
    for (const double t : rootsOf<5>(footPolynomial(c, point))) {
        const Point foot = pointAt(c, t);
        visit(t, foot, (foot - point).squaredNorm());
    }
}

}  // namespace

Box controlBoxOf(const Cubic& c) {
    Box box;
    for (const Point* p : {&c.p0, &c.p1, &c.p2, &c.p3}) box.include(*p);
    return box;
}

double closestParameter(const Cubic& c, const Point& point) {
    double best = 0;
    double bestSquared = (c.p0 - point).squaredNorm();
    visitFeet(c, point, [&](double t, const Point&, double squared) {
        if (squared < bestSquared) {
            best = t;
            bestSquared = squared;
        }
    });
    return (c.p3 - point).squaredNorm() < bestSquared ? 1 : best;
}

ClosestPlace closestOn(const Path& path, const Point& point) {
    ClosestPlace best;
    double bestSquared = std::numeric_limits<double>::infinity();
    const auto consider = [&](const PathPosition& at, const Point& place, double squared) {
        if (!(squared < bestSquared)) return;
        bestSquared = squared;
        best.position = at;
        best.point = place;
    };
    // All ends first: they bound the distance, so that most pieces need no closer look.
    for (std::size_t i = 0; i < path.pieces.size(); ++i) {
        const Cubic& c = path.pieces[i];
        consider({i, 0}, c.p0, (c.p0 - point).squaredNorm());
        consider({i, 1}, c.p3, (c.p3 - point).squaredNorm());
    }
    for (std::size_t i = 0; i < path.pieces.size(); ++i) {
        const Cubic& c = path.pieces[i];
        if (squaredDistance(controlBoxOf(c), point) >= bestSquared) continue;
        visitFeet(c, point, [&](double t, const Point& foot, double squared) {
            consider({i, t}, foot, squared);
        });
    }
    best.distanceMm = std::sqrt(bestSquared);
    return best;
}

}  // namespace coutil
