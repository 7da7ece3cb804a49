#pragma once

#include <cmath>
#include <numbers>

#include "core/geometry/path.h"

namespace coutil::testing {

// The customary cubic for a quarter of the unit circle, k = 4/3 (sqrt 2 - 1).
inline constexpr double kQuarterArm = 0.5522847498307935;

inline Cubic quarterCircle(double radiusMm) {
    const double r = radiusMm;
    const double k = kQuarterArm * radiusMm;
    return {{r, 0}, {r, k}, {k, r}, {0, r}};
}

// An arc about the origin from one angle to another, arms 4/3 tan(angle / 4).
inline Cubic arcCubic(double radiusMm, double fromRad, double toRad) {
    const double arm = radiusMm * 4 / 3 * std::tan((toRad - fromRad) / 4);
    const Point a(radiusMm * std::cos(fromRad), radiusMm * std::sin(fromRad));
    const Point b(radiusMm * std::cos(toRad), radiusMm * std::sin(toRad));
    return {a, a + arm * Vector(-std::sin(fromRad), std::cos(fromRad)),
            b - arm * Vector(-std::sin(toRad), std::cos(toRad)), b};
}

inline Path wholeCircle(const Point& centre, double radiusMm) {
    Path path;
    for (int i = 0; i < 4; ++i) {
        const Path quarter =
            placed(Path{{quarterCircle(radiusMm)}}, {i * std::numbers::pi / 2, centre, false});
        path = i == 0 ? quarter : joined(path, quarter);
    }
    path.pieces.back().p3 = path.start();
    return path;
}

// y = a x^2 for x from x0 to x1, exactly: control points are values of the polar form.
inline Cubic parabola(double a, double x0, double x1) {
    const auto point = [a](double u, double v, double w) {
        return Point((u + v + w) / 3, a * (u * v + v * w + w * u) / 3);
    };
    return {point(x0, x0, x0), point(x0, x0, x1), point(x0, x1, x1), point(x1, x1, x1)};
}

// y = a x^3 likewise.
inline Cubic cubicParabola(double a, double x0, double x1) {
    const auto point = [a](double u, double v, double w) {
        return Point((u + v + w) / 3, a * u * v * w);
    };
    return {point(x0, x0, x0), point(x0, x0, x1), point(x0, x1, x1), point(x1, x1, x1)};
}

// (s^2, s^3) for s from s0 to s1: a cusp at s = 0.
inline Cubic semicubicalParabola(double s0, double s1) {
    const auto point = [](double u, double v, double w) {
        return Point((u * v + v * w + w * u) / 3, u * v * w);
    };
    return {point(s0, s0, s0), point(s0, s0, s1), point(s0, s1, s1), point(s1, s1, s1)};
}

}  // namespace coutil::testing
