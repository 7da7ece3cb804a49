#pragma once

#include <cstdint>
#include <vector>

#include "core/geometry/point.h"

namespace coutil {

// A point on the ink grid, whole micrometres.
struct InkPoint {
    std::int64_t xUm = 0;
    std::int64_t yUm = 0;

    bool operator==(const InkPoint&) const = default;
    bool operator<(const InkPoint& other) const {
        return xUm != other.xUm ? xUm < other.xUm : yUm < other.yUm;
    }
};

// A closed polygon on the ink grid, first point not repeated. Coordinates within +-1 km, so that
// everything below is exact in 64 bits.
using InkRing = std::vector<InkPoint>;

[[nodiscard]] InkPoint onInkGrid(const Point& p);  // nearest
[[nodiscard]] Point inMillimetres(const InkPoint& p);

// Twice the signed area in square micrometres, positive counter-clockwise; exact.
[[nodiscard]] std::int64_t doubleAreaUm2(const InkRing& ring);

// The ring without corners that are none: repeated points, and points on the straight way from the
// one before to the one after.
[[nodiscard]] InkRing withoutStraightCorners(const InkRing& ring);

// Whether no two sides share a point but neighbours their corner, and none folds back; exact.
[[nodiscard]] bool isSimple(const InkRing& ring);

// Parts a ring where it touches itself (a corner on another corner or on another side) and returns
// the part with the largest area. A simple ring comes back unchanged. Sides that cross in their
// middles are not parted.
[[nodiscard]] InkRing largestPartAtTouches(const InkRing& ring);

}  // namespace coutil
