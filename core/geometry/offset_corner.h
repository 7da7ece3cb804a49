#pragma once

#include <cstddef>
#include <vector>

#include "core/geometry/offset_chain.h"

namespace coutil {

// How two chains are joined at the corner between them.
struct CornerJoin {
    CornerTreatment treatment = CornerTreatment::mitred;  // as built
    std::size_t firstKeeps = 0;  // points of the first chain before this index stay
    std::size_t secondFrom = 0;  // points of the second chain from this index on stay
    std::vector<Point> through;  // from the first chain to the second
    double reachMm = 0;          // the corner zone, see OffsetCorner
    double sharedMm = 0;  // within this distance of the corner the two allowances share their place
};

// Builds the corner between the end of one chain and the start of the next, which meet there. See
// CornerTreatment for the shapes.
[[nodiscard]] CornerJoin joinAtCorner(const OffsetChain& first, const OffsetChain& second,
                                      CornerTreatment treatment);

// The same corner with both chains left whole: bevelled, or for a hollow one out to the corner and
// back. For chains that would lose everything to the corners at their two ends.
[[nodiscard]] CornerJoin joinWithoutCuts(const OffsetChain& first, const OffsetChain& second);

}  // namespace coutil
