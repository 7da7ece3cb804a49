#include "core/sheets/outline_shape.h"

#include <algorithm>
#include <cmath>

namespace coutil {
namespace {

// Narrows t0..t1 to where p + t d <= limit; false when nothing is left.
bool clipBelow(double p, double d, double limit, double& t0, double& t1) {
    if (d == 0) return p <= limit;
    const double t = (limit - p) / d;
    if (d > 0) {
        t1 = std::min(t1, t);
    } else {
        t0 = std::max(t0, t);
    }
    return t0 <= t1;
}

double distanceToSegment(const Point& p, const Point& a, const Point& b) {
    const Vector d = b - a;
    const double square = d.squaredNorm();
    const double t = square > 0 ? std::clamp((p - a).dot(d) / square, 0.0, 1.0) : 0.0;
    return (a + t * d - p).norm();
}

double cross(const Vector& a, const Vector& b) { return a.x() * b.y() - a.y() * b.x(); }

bool segmentsCross(const Point& a, const Point& b, const Point& c, const Point& d) {
    const double c1 = cross(b - a, c - a);
    const double c2 = cross(b - a, d - a);
    const double c3 = cross(d - c, a - c);
    const double c4 = cross(d - c, b - c);
    return (c1 > 0) != (c2 > 0) && (c3 > 0) != (c4 > 0);
}

double segmentDistance(const Point& a, const Point& b, const Point& c, const Point& d) {
    if (segmentsCross(a, b, c, d)) return 0;
    return std::min({distanceToSegment(a, c, d), distanceToSegment(b, c, d),
                     distanceToSegment(c, a, b), distanceToSegment(d, a, b)});
}

Box grown(const Box& box, double byMm) {
    return {box.lowest - Vector::Constant(byMm), box.highest + Vector::Constant(byMm)};
}

// The sides of a shape that come into a box.
std::vector<std::pair<Point, Point>> sidesIn(const OutlineShape& shape, const Box& box) {
    std::vector<std::pair<Point, Point>> sides;
    for (std::size_t i = 0; i < shape.points.size(); ++i) {
        const Point& a = shape.points[i];
        const Point& b = shape.points[(i + 1) % shape.points.size()];
        if (segmentMeets(a, b, box)) sides.emplace_back(a, b);
    }
    return sides;
}

}  // namespace

bool boxesMeet(const Box& a, const Box& b) {
    return a.lowest.x() <= b.highest.x() && b.lowest.x() <= a.highest.x() &&
           a.lowest.y() <= b.highest.y() && b.lowest.y() <= a.highest.y();
}

bool segmentMeets(const Point& a, const Point& b, const Box& box) {
    const Vector d = b - a;
    double t0 = 0;
    double t1 = 1;
    return clipBelow(a.x(), d.x(), box.highest.x(), t0, t1) &&
           clipBelow(-a.x(), -d.x(), -box.lowest.x(), t0, t1) &&
           clipBelow(a.y(), d.y(), box.highest.y(), t0, t1) &&
           clipBelow(-a.y(), -d.y(), -box.lowest.y(), t0, t1);
}

OutlineShape shapeOf(std::vector<Point> points) {
    OutlineShape shape{std::move(points), {}};
    for (const Point& p : shape.points) shape.box.include(p);
    return shape;
}

OutlineShape shapeOf(const Tracing& tracing, const Placement& placement, double toleranceMm) {
    std::vector<Point> points = flattened(placed(tracing.cutting, placement), toleranceMm);
    if (points.size() > 1 && points.front() == points.back()) points.pop_back();
    return shapeOf(std::move(points));
}

bool isInside(const OutlineShape& shape, const Point& point) {
    bool inside = false;
    for (std::size_t i = 0; i < shape.points.size(); ++i) {
        const Point& a = shape.points[i];
        const Point& b = shape.points[(i + 1) % shape.points.size()];
        if ((a.y() > point.y()) == (b.y() > point.y())) continue;
        const double t = (point.y() - a.y()) / (b.y() - a.y());
        if (point.x() < a.x() + t * (b.x() - a.x())) inside = !inside;
    }
    return inside;
}

bool meets(const OutlineShape& shape, const Box& box) {
    if (box.isEmpty() || shape.box.isEmpty() || !boxesMeet(shape.box, box)) return false;
    for (std::size_t i = 0; i < shape.points.size(); ++i) {
        const Point& a = shape.points[i];
        if (segmentMeets(a, shape.points[(i + 1) % shape.points.size()], box)) return true;
    }
    return isInside(shape, box.lowest);
}

double distanceMm(const OutlineShape& a, const OutlineShape& b, double capMm) {
    const Box reach = grown(a.box, capMm);
    if (!boxesMeet(reach, b.box)) return capMm;
    if (isInside(a, b.points.front()) || isInside(b, a.points.front())) return 0;
    const auto sidesA = sidesIn(a, grown(b.box, capMm));
    const auto sidesB = sidesIn(b, reach);
    double least = capMm;
    for (const auto& [p, q] : sidesA) {
        for (const auto& [r, s] : sidesB) {
            if (std::max(p.x(), q.x()) + least < std::min(r.x(), s.x())) continue;
            if (std::max(r.x(), s.x()) + least < std::min(p.x(), q.x())) continue;
            if (std::max(p.y(), q.y()) + least < std::min(r.y(), s.y())) continue;
            if (std::max(r.y(), s.y()) + least < std::min(p.y(), q.y())) continue;
            least = std::min(least, segmentDistance(p, q, r, s));
        }
    }
    return least;
}

}  // namespace coutil
