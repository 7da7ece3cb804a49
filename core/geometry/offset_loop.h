#pragma once

#include <vector>

#include "core/geometry/offset_chain.h"
#include "core/geometry/offset_corner.h"

namespace coutil {

// The corners after every chain, the last one closing the loop. corners[e] is asked for between
// edge e and the next, empty for mitres; within an edge corners are mitred. Where the cuts at both
// ends of a chain would pass each other both corners are built without cuts.
[[nodiscard]] std::vector<CornerJoin> joinsOf(const std::vector<OffsetChain>& chains,
                                              const std::vector<CornerTreatment>& corners);

// The closed raw loop: chains and corners one after the other. It may cross itself; the region it
// winds round at least once is the panel with its allowances.
[[nodiscard]] std::vector<Point> rawLoopOf(const std::vector<OffsetChain>& chains,
                                           const std::vector<CornerJoin>& joins);

// The raw loop itself as cubic pieces, for a loop that does not cross itself.
[[nodiscard]] Path pathAlong(const std::vector<OffsetChain>& chains,
                             const std::vector<CornerJoin>& joins);

}  // namespace coutil
