#include "core/geometry/cubic.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/cross_product.h"
#include "core/geometry/tolerances.h"

namespace coutil {

namespace {

// The three-argument polar form: the point for the parameters a, b and c, each used once.
Point blossom(const Cubic& q, double a, double b, double c) {
    const Point r0 = (1 - a) * q.p0 + a * q.p1;
    const Point r1 = (1 - a) * q.p1 + a * q.p2;
    const Point r2 = (1 - a) * q.p2 + a * q.p3;
    const Point s0 = (1 - b) * r0 + b * r1;
    const Point s1 = (1 - b) * r1 + b * r2;
    return (1 - c) * s0 + c * s1;
}

double longestLegMm(const Cubic& c) {
    return std::sqrt(std::max(
        {(c.p1 - c.p0).squaredNorm(), (c.p2 - c.p1).squaredNorm(), (c.p3 - c.p2).squaredNorm()}));
}

// The direction in which the curve leaves (or, at its end, reaches) a place where the first
// derivative vanishes: the first higher derivative that does not.
Vector limitTangentAt(const Cubic& c, double t, double vanished) {
    const bool isAtEnd = t >= 1;
    const Vector second = secondDerivativeAt(c, t);
    if (second.norm() > vanished) return (isAtEnd ? -second : second).normalized();
    const Vector third = c.p3 - 3 * c.p2 + 3 * c.p1 - c.p0;
    if (third.norm() > vanished) return third.normalized();
    return {1, 0};
}

// Includes the extremes of one coordinate inside the piece, by the roots of its derivative.
void includeExtremes(const Cubic& c, int axis, Box& box) {
    const double d0 = c.p1[axis] - c.p0[axis];
    const double d1 = c.p2[axis] - c.p1[axis];
    const double d2 = c.p3[axis] - c.p2[axis];
    const double quadratic = d0 - 2 * d1 + d2;
    const double half = d1 - d0;
    const double discriminant = half * half - quadratic * d0;
    if (discriminant < 0) return;
    // The stable pair of roots: never subtracts two nearly equal numbers.
    const double q = -(half + std::copysign(std::sqrt(discriminant), half));
    for (const double t : {q != 0 ? d0 / q : -1, quadratic != 0 ? q / quadratic : -1}) {
        if (t > 0 && t < 1) box.include(pointAt(c, t));
    }
}

}  // namespace

Cubic straightCubic(const Point& a, const Point& b) {
    const Vector third = (b - a) / 3;
    return {a, a + third, b - third, b};
}

Point pointAt(const Cubic& c, double t) {
    const double u = 1 - t;
    return u * u * u * c.p0 + 3 * u * u * t * c.p1 + 3 * u * t * t * c.p2 + t * t * t * c.p3;
}

Vector derivativeAt(const Cubic& c, double t) {
    const double u = 1 - t;
    return 3 * u * u * (c.p1 - c.p0) + 6 * u * t * (c.p2 - c.p1) + 3 * t * t * (c.p3 - c.p2);
}

Vector secondDerivativeAt(const Cubic& c, double t) {
    return 6 * (1 - t) * (c.p2 - 2 * c.p1 + c.p0) + 6 * t * (c.p3 - 2 * c.p2 + c.p1);
}

Vector tangentAt(const Cubic& c, double t) {
    const Vector first = derivativeAt(c, t);
    const double vanished = tolerance::kVanishedSpeedShare * longestLegMm(c);
    const double speed = first.norm();
    return speed > vanished ? Vector(first / speed) : limitTangentAt(c, t, vanished);
}

double curvaturePerMmAt(const Cubic& c, double t) {
    const Vector first = derivativeAt(c, t);
    const double speed = first.norm();
    if (speed <= tolerance::kVanishedSpeedShare * longestLegMm(c)) return 0;
    return crossProduct(first, secondDerivativeAt(c, t)) / (speed * speed * speed);
}

std::pair<Cubic, Cubic> splitAt(const Cubic& c, double t) {
    const Point shared = pointAt(c, t);
    const Point middle = (1 - t) * c.p1 + t * c.p2;
    const Point left = (1 - t) * c.p0 + t * c.p1;
    const Point right = (1 - t) * c.p2 + t * c.p3;
    return {Cubic{c.p0, left, (1 - t) * left + t * middle, shared},
            Cubic{shared, (1 - t) * middle + t * right, right, c.p3}};
}

Cubic between(const Cubic& c, double t0, double t1) {
    // The ends are what pointAt() says, so that parts cut at one parameter meet without a gap.
    return {pointAt(c, t0), blossom(c, t0, t0, t1), blossom(c, t0, t1, t1), pointAt(c, t1)};
}

Cubic reversed(const Cubic& c) { return {c.p3, c.p2, c.p1, c.p0}; }

Box boundsOf(const Cubic& c) {
    Box box;
    box.include(c.p0);
    box.include(c.p3);
    for (const int axis : {0, 1}) {
        const auto [low, high] = std::minmax(c.p1[axis], c.p2[axis]);
        if (low < box.lowest[axis] || high > box.highest[axis]) includeExtremes(c, axis, box);
    }
    return box;
}

}  // namespace coutil
