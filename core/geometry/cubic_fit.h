#pragma once

#include <optional>
#include <span>

#include "core/geometry/cubic.h"

namespace coutil {

// One cubic from the first to the last point of a chain (at least two, none repeated) that leaves
// the first in startDirection and reaches the last in endDirection (unit length), by least squares.
// Returned only if it is proven to stay within toleranceMm of the chain, and the chain of it.
[[nodiscard]] std::optional<Cubic> cubicNear(std::span<const Point> chain,
                                             const Vector& startDirection,
                                             const Vector& endDirection, double toleranceMm);

}  // namespace coutil
