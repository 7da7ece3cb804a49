#pragma once

#include <optional>

#include "core/pattern/pattern.h"

namespace coutil {

// The seam position at which a long edge reaches a height, nearest to the waist where it does so
// more than once; nothing where it does not.
[[nodiscard]] std::optional<double> seamPositionAtHeight(const Edge& edge, double heightMm);

}  // namespace coutil
