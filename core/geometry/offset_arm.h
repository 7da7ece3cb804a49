#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/geometry/offset_chain.h"

namespace coutil {

// The end of a chain's offset seen from a corner: points[0] is the far end of its straight
// prolongation beyond the corner, points[1] the chain's own end, then the chain inwards. Both
// chains of a corner look alike this way round.
struct OffsetArm {
    std::vector<Point> points;
    Vector beyond = Vector::Zero();   // unit direction of the prolongation
    Vector outward = Vector::Zero();  // unit normal at the corner
    double widthMm = 0;
};

// The arm at the end (start) of a chain, prolonged by reachMm and followed inwards for as far, but
// not beyond half the chain.
[[nodiscard]] OffsetArm armAtEnd(const OffsetChain& chain, double reachMm);
[[nodiscard]] OffsetArm armAtStart(const OffsetChain& chain, double reachMm);

// A place on a chain of points: on the segment from points[segment] to the next.
struct ChainPlace {
    std::size_t segment = 0;
    Point at = Point::Zero();
};

// Where two chains of points cross: the crossing first met along `first`.
struct ChainCrossing {
    ChainPlace onFirst;
    ChainPlace onSecond;
};
[[nodiscard]] std::optional<ChainCrossing> firstCrossing(const std::vector<Point>& first,
                                                         const std::vector<Point>& second);

}  // namespace coutil
