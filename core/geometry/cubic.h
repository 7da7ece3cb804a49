#pragma once

#include <utility>

#include "core/geometry/point.h"

namespace coutil {

// One cubic Bezier piece, control points in millimetres.
struct Cubic {
    Point p0 = Point::Zero();
    Point p1 = Point::Zero();
    Point p2 = Point::Zero();
    Point p3 = Point::Zero();

    bool operator==(const Cubic&) const = default;
};

// Smallest rectangle with sides along the axes, mm. Empty while lowest exceeds highest.
struct Box {
    Point lowest = Point::Constant(1e300);
    Point highest = Point::Constant(-1e300);

    [[nodiscard]] bool isEmpty() const { return lowest.x() > highest.x(); }
    [[nodiscard]] double widthMm() const { return highest.x() - lowest.x(); }
    [[nodiscard]] double heightMm() const { return highest.y() - lowest.y(); }
    void include(const Point& p) {
        lowest = lowest.cwiseMin(p);
        highest = highest.cwiseMax(p);
    }
    void include(const Box& other) {
        lowest = lowest.cwiseMin(other.lowest);
        highest = highest.cwiseMax(other.highest);
    }
};

// The straight piece from a to b; its control points lie at thirds, so the parameter runs at even
// speed.
[[nodiscard]] Cubic straightCubic(const Point& a, const Point& b);

// The point, first and second derivative at parameter t in 0..1.
[[nodiscard]] Point pointAt(const Cubic& c, double t);
[[nodiscard]] Vector derivativeAt(const Cubic& c, double t);
[[nodiscard]] Vector secondDerivativeAt(const Cubic& c, double t);

// Unit tangent in the direction of travel. Where the first derivative vanishes the limit along the
// curve is taken; (1, 0) for a piece that is one single point.
[[nodiscard]] Vector tangentAt(const Cubic& c, double t);

// Signed curvature in 1/mm, positive where the curve turns to the left; 0 where the derivative
// vanishes.
[[nodiscard]] double curvaturePerMmAt(const Cubic& c, double t);

// The two parts left and right of t; their shared point is the same number in both.
[[nodiscard]] std::pair<Cubic, Cubic> splitAt(const Cubic& c, double t);

// The part from t0 to t1, t0 <= t1.
[[nodiscard]] Cubic between(const Cubic& c, double t0, double t1);

[[nodiscard]] Cubic reversed(const Cubic& c);

// Tight bounds of the curve itself (not of its control points), error below 1e-9 mm.
[[nodiscard]] Box boundsOf(const Cubic& c);

// Length of the curve in mm by Gauss-Legendre rules of 8 and 16 points on parts chosen by a proven
// bound (arc_length.cpp); error below 1e-8 mm for any piece up to 2 m, cusps included (tested).
[[nodiscard]] double lengthMm(const Cubic& c);

}  // namespace coutil
