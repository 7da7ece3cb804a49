#pragma once

#include <optional>

#include "core/comparison/comparison.h"

namespace coutil::comparison {

// One long edge of a seam in both patterns; null where it is not in both.
struct MovedEdge {
    const Edge* inA = nullptr;
    const Edge* inB = nullptr;
    Vector shiftOfB = Vector::Zero();
};

// Where a seam was taken in or let out most: both edges together, each measured square to itself as
// it is in a, at the same seam position. Stations every 4 mm and a search between the neighbours of
// the largest. Only where both edges of the seam can be measured, or one where it has but one;
// nothing where there is no such place.
[[nodiscard]] std::optional<SeamAmount> largestAmount(const MovedEdge& inFront,
                                                      const MovedEdge& behind);

}  // namespace coutil::comparison
