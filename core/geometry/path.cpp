#include "core/geometry/path.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/cross_product.h"

namespace coutil {

namespace {

Vector turned(const Vector& v, double sine, double cosine) {
    return {cosine * v.x() - sine * v.y(), sine * v.x() + cosine * v.y()};
}

// Twice the area swept from the origin along the piece: half the integral of x dy - y dx, worked
// out for the Bernstein polynomials.
double twiceSweptAreaMm2(const Cubic& c, const Point& origin) {
    const Vector a = c.p0 - origin;
    const Vector b = c.p1 - origin;
    const Vector d = c.p2 - origin;
    const Vector e = c.p3 - origin;
    return (6 * crossProduct(a, b) + 3 * crossProduct(a, d) + crossProduct(a, e) +
            3 * crossProduct(b, d) + 3 * crossProduct(b, e) + 6 * crossProduct(d, e)) /
           10;
}

}  // namespace

Path straightPath(const Point& a, const Point& b) { return Path{{straightCubic(a, b)}}; }

Path polylinePath(const std::vector<Point>& points) {
    Path path;
    for (std::size_t i = 1; i < points.size(); ++i) {
        path.pieces.push_back(straightCubic(points[i - 1], points[i]));
    }
    return path;
}

Point pointAt(const Path& path, const PathPosition& position) {
    return pointAt(path.pieces[position.piece], position.t);
}

Vector tangentAt(const Path& path, const PathPosition& position) {
    return tangentAt(path.pieces[position.piece], position.t);
}

double curvaturePerMmAt(const Path& path, const PathPosition& position) {
    return curvaturePerMmAt(path.pieces[position.piece], position.t);
}

Path reversed(const Path& path) {
    Path back = path;
    std::reverse(back.pieces.begin(), back.pieces.end());
    for (Cubic& c : back.pieces) c = reversed(c);
    return back;
}

Path joined(const Path& first, const Path& second) {
    Path whole = first;
    const std::size_t joint = whole.pieces.size();
    whole.pieces.insert(whole.pieces.end(), second.pieces.begin(), second.pieces.end());
    // Ends that agree to rounding are made one number: a path never holds a gap.
    if (joint > 0 && joint < whole.pieces.size()) {
        whole.pieces[joint].p0 = whole.pieces[joint - 1].p3;
    }
    return whole;
}

Point placed(const Point& point, const Placement& placement) {
    const Vector upright = placement.isMirrored ? Vector(-point.x(), point.y()) : point;
    return turned(upright, std::sin(placement.turnRad), std::cos(placement.turnRad)) +
           placement.shift;
}

Path placed(const Path& path, const Placement& placement) {
    const double sine = std::sin(placement.turnRad);
    const double cosine = std::cos(placement.turnRad);
    Path moved = path;
    for (Cubic& c : moved.pieces) {
        for (Point* p : {&c.p0, &c.p1, &c.p2, &c.p3}) {
            if (placement.isMirrored) p->x() = -p->x();
            *p = turned(*p, sine, cosine) + placement.shift;
        }
    }
    return moved;
}

Box boundsOf(const Path& path) {
    Box box;
    for (const Cubic& c : path.pieces) box.include(boundsOf(c));
    return box;
}

double signedAreaMm2(const Path& path) {
    if (path.isEmpty()) return 0;
    // Swept from the start, so that the closing chord adds nothing and far paths lose no digits.
    double twice = 0;
    for (const Cubic& c : path.pieces) twice += twiceSweptAreaMm2(c, path.start());
    return twice / 2;
}

}  // namespace coutil
