#include "ui/canvas/painter_path.h"

#include <cmath>

#include "core/geometry/tolerances.h"

namespace coutil {

namespace {

// Both control points on the chord: lines are several times cheaper to stroke than curves.
bool isStraight(const Cubic& c) {
    const Vector chord = c.p3 - c.p0;
    const double length = chord.norm();
    if (length < tolerance::kSamePointMm) return true;
    const auto off = [&](const Point& p) {
        const Vector v = p - c.p0;
        return std::abs(chord.x() * v.y() - chord.y() * v.x()) / length;
    };
    return off(c.p1) < tolerance::kSamePointMm && off(c.p2) < tolerance::kSamePointMm;
}

}  // namespace

QPainterPath painterPath(const Path& path, bool isClosed) {
    QPainterPath painted;
    if (path.isEmpty()) return painted;
    painted.moveTo(painterPoint(path.start()));
    for (const Cubic& c : path.pieces) {
        if (isStraight(c)) {
            painted.lineTo(painterPoint(c.p3));
        } else {
            painted.cubicTo(painterPoint(c.p1), painterPoint(c.p2), painterPoint(c.p3));
        }
    }
    if (isClosed) painted.closeSubpath();
    return painted;
}

}  // namespace coutil
