#include "core/block/edge_curve.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <numbers>

namespace coutil {
namespace {

// From one direction to another, radians, counter-clockwise positive.
double angleBetween(const Vector& from, const Vector& to) {
    return std::atan2(from.x() * to.y() - from.y() * to.x(), from.dot(to));
}

Vector turned(const Vector& v, double rad) {
    return {v.x() * std::cos(rad) - v.y() * std::sin(rad),
            v.x() * std::sin(rad) + v.y() * std::cos(rad)};
}

// Directions of a line through one panel, rightwards.
struct Directions {
    Vector atFront = Vector::UnitX();
    Vector atBack = Vector::UnitX();
};

// A slope that carries the line through without rising over a peak or falling through a dip: level
// where it turns from rising to falling, never more than twice the flatter of both chords.
double withoutOvershoot(double slopeRad, double chordBeforeRad, double chordAfterRad) {
    if (chordBeforeRad * chordAfterRad <= 0) return 0;
    const double most = 2 * std::min(std::abs(chordBeforeRad), std::abs(chordAfterRad));
    return std::clamp(slopeRad, -most, most);
}

// The other end of a parabola over the chord that has `direction` at one end.
Vector mirroredInChord(const Vector& chord, const Vector& direction) {
    return turned(chord.normalized(), angleBetween(direction, chord));
}

// A cubic that is a graph over its chord: the handles reach to thirds of the chord.
Path graphOverChord(const Point& from, const Point& to, const Directions& directions) {
    const Vector chord = to - from;
    const auto handle = [&](const Vector& direction) {
        // Never longer than over 60 degrees, so that a steep end can't shoot out.
        const double cosine = std::max(direction.dot(chord) / chord.norm(), 0.5);
        return direction * (chord.norm() / 3 / cosine);
    };
    return {{{from, from + handle(directions.atFront), to - handle(directions.atBack), to}}};
}

}  // namespace

double lineAngleAtSeamRad(const PanelCorners& before, const PanelCorners& after) {
    const Vector chordBefore = before.back - before.front;
    const Vector chordAfter = after.back - after.front;
    // The shorter chord counts more, as on a circle through the three corners.
    const double whole = chordBefore.norm() + chordAfter.norm();
    const auto mean = [&](double ofBefore, double ofAfter) {
        return (ofBefore * chordAfter.norm() + ofAfter * chordBefore.norm()) / whole;
    };
    const double slopeBefore = angleBetween(Vector::UnitX(), chordBefore);
    const double slopeAfter = angleBetween(Vector::UnitX(), chordAfter);
    const double level = mean(angleBetween(before.backUp, Vector::UnitX()),
                              angleBetween(after.frontUp, Vector::UnitX()));
    return level + withoutOvershoot(mean(slopeBefore, slopeAfter), slopeBefore, slopeAfter);
}

std::vector<Path> edgeCurves(const std::vector<PanelCorners>& panels, LineMeeting front,
                             LineMeeting back) {
    std::vector<Directions> directions(panels.size());
    for (std::size_t p = 0; p + 1 < panels.size(); ++p) {
        const double angle = lineAngleAtSeamRad(panels[p], panels[p + 1]);
        directions[p].atBack = turned(panels[p].backUp, angle);
        directions[p + 1].atFront = turned(panels[p + 1].frontUp, angle);
    }
    constexpr double kSquareRad = -std::numbers::pi / 2;
    const PanelCorners& first = panels.front();
    const PanelCorners& last = panels.back();
    directions.front().atFront =
        front == LineMeeting::square
            ? turned(first.frontUp, kSquareRad)
            : mirroredInChord(first.back - first.front, directions.front().atBack);
    directions.back().atBack =
        back == LineMeeting::square
            ? turned(last.backUp, kSquareRad)
            : mirroredInChord(last.back - last.front, directions.back().atFront);
    std::vector<Path> curves;
    for (std::size_t p = 0; p < panels.size(); ++p)
        curves.push_back(graphOverChord(panels[p].front, panels[p].back, directions[p]));
    return curves;
}

}  // namespace coutil
