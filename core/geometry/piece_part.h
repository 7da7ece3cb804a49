#pragma once

#include <array>
#include <optional>
#include <utility>

#include "core/geometry/cubic.h"

// The parts into which the search for contacts halves two pieces, and what it asks of them.
namespace coutil {

// The part t0..t1 of a piece, as a piece of its own.
struct PiecePart {
    Cubic c;
    double t0 = 0;
    double t1 = 1;

    [[nodiscard]] std::array<const Point*, 4> points() const {
        return {&c.p0, &c.p1, &c.p2, &c.p3};
    }
    [[nodiscard]] std::array<Vector, 3> legs() const {
        return {c.p1 - c.p0, c.p2 - c.p1, c.p3 - c.p2};
    }
};

[[nodiscard]] std::pair<PiecePart, PiecePart> halvesOf(const PiecePart& part);

// The longer side of the box of the control points, mm.
[[nodiscard]] double extentMm(const PiecePart& part);

// True if the boxes of the control points, or the slabs along one of the chords, are more than
// tolerance::kTouchMm apart.
[[nodiscard]] bool cannotMeet(const PiecePart& a, const PiecePart& b);

// True if no chord of one is parallel to a chord of the other, so that they cross once at most.
[[nodiscard]] bool areTransversal(const PiecePart& a, const PiecePart& b);

// True if the part is no thicker than a tenth of tolerance::kTouchMm and never turns back along its
// chord.
[[nodiscard]] bool isThin(const PiecePart& part);

// For two thin parts whose chords are nearly parallel: the ends of the stretch of a's chord that
// lies within tolerance::kTouchMm of b's chord, if there is one.
[[nodiscard]] std::optional<std::pair<Point, Point>> nearStretch(const PiecePart& a,
                                                                 const PiecePart& b);

// True if the chords make an angle under a hundredth of a radian.
[[nodiscard]] bool areNearlyParallel(const PiecePart& a, const PiecePart& b);

}  // namespace coutil
