#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/geometry/offset_arm.h"

namespace coutil {

// The two arms of a corner that turns towards the panel.
struct Corner {
    Point at;
    OffsetArm first;
    OffsetArm second;
    double widestMm = 0;
    double limitMm = 0;  // no point of the corner may be farther away
};

// A corner's shape: the arm segments it is tied to and the points from first to second.
struct CornerShape {
    std::size_t firstSegment = 0;
    std::size_t secondSegment = 0;
    std::vector<Point> through;
};

// The corner between the end of one chain and the start of the next.
[[nodiscard]] Corner cornerBetween(const OffsetChain& first, const OffsetChain& second);

// How far the shape reaches from the corner, at least the wider width, mm.
[[nodiscard]] double reachOf(const Corner& corner, const CornerShape& shape);

// The asked shape (see CornerTreatment), nothing where it would reach too far. `treatment` becomes
// mitred where there is no allowance to turn back.
[[nodiscard]] std::optional<CornerShape> askedShape(const Corner& corner,
                                                    CornerTreatment& treatment);

// The bevel, which can always be built.
[[nodiscard]] CornerShape bevelledShape(const Corner& corner);

}  // namespace coutil
