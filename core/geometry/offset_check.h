#pragma once

#include <vector>

#include "core/geometry/offset_chain.h"

namespace coutil {

// A corner as the check knows it, see CornerJoin.
struct CornerZone {
    Point at = Point::Zero();
    double reachMm = 0;
    double sharedMm = 0;
};

// Verifies an offset against the chains it was made from, by distances alone: nothing is taken over
// from how it was built but the corner zones. Returns offsetTooNear and offsetTooFar (errors, with
// "value" found and "limit" asked), at most one of each, and offsetLostPart (warnings).
// `corners` are all corners, those inside edges too.
[[nodiscard]] std::vector<Problem> checkOffset(const std::vector<OffsetChain>& chains,
                                               const std::vector<CornerZone>& corners,
                                               const std::vector<Point>& outline);

}  // namespace coutil
