#pragma once

#include <cstddef>
#include <vector>

#include "core/geometry/offset_outline.h"

namespace coutil {

// A smooth stretch of one edge with its offset, both as chains of points.
struct OffsetChain {
    std::size_t edge = 0;
    double widthMm = 0;
    std::vector<Cubic> pieces;         // of the edge
    std::vector<PathPosition> places;  // of the feet on `pieces`; at a joint the end of the earlier
    std::vector<Point> feet;           // on the edge, in its direction
    std::vector<Point> points;  // feet[k] + widthMm times the unit normal there, to the right
    Vector startDirection = Vector::Zero();  // unit tangents
    Vector endDirection = Vector::Zero();
};

// All smooth stretches of all edges in order; an edge that turns inside is parted there. The chords
// of feet and of points leave the true curves by at most kOffsetChordMm, save where the offset
// turns back on itself.
[[nodiscard]] std::vector<OffsetChain> offsetChains(const std::vector<OffsetEdge>& edges);

// Appends the offset from points[first] to points[last] as cubic pieces that start and end in
// exactly these points and leave the true offset by at most kOffsetFitMm; only for stretches that
// nowhere run backwards.
void appendFitted(const OffsetChain& chain, std::size_t first, std::size_t last, Path& path);

// Appends the straight way from a to b; where it goes straight on from a straight last piece it
// becomes one with it, and where a is b nothing is appended.
void appendStraight(const Point& a, const Point& b, Path& path);

// Appends chain.points[first, last) to a raw loop. Where the edge is hollower than the width the
// offset would run backwards; there the rectangles on the chords are swept one by one instead, so
// that no part of a raw loop ever sweeps a place negatively and the winding number of a place is
// the number of times it is covered.
void appendSwept(const OffsetChain& chain, std::size_t first, std::size_t last,
                 std::vector<Point>& rawLoop);

// Whether the offset runs backwards between feet k and k + 1.
[[nodiscard]] bool runsBackwards(const OffsetChain& chain, std::size_t k);

}  // namespace coutil
