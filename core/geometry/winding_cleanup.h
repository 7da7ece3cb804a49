#pragma once

#include <vector>

#include "core/geometry/ink_ring.h"

namespace coutil {

// A part of a raw loop's region that is not inside the outer ring's boundary: a loose piece, or a
// gap enclosed by it.
struct LeftOutPart {
    Point at = Point::Zero();  // a point of its boundary
    double sizeMm = 0;         // longer side of its upright bounding rectangle
    double areaMm2 = 0;
};

struct CleanedLoop {
    InkRing outer;  // simple, counter-clockwise; empty when the loop winds round nothing
    std::vector<LeftOutPart> leftOut;
    bool wasClean = false;  // the raw loop was simple already and is the outer ring as it stands
};

// The region a raw loop winds round at least once, counted positive counter-clockwise: the outer
// boundary of its largest piece, on the ink grid. Points move by at most 1.5 grid steps.
[[nodiscard]] CleanedLoop positiveRegion(const std::vector<Point>& rawLoop);

}  // namespace coutil
