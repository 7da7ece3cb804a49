#pragma once

#include <QRectF>
#include <vector>

#include "core/geometry/path.h"

namespace coutil {

// The roomiest rectangle inside a closed outline between two of the level heights (or between a
// level and the outline's end), a little off every line, in the outline's own frame. Null where
// nothing is left.
[[nodiscard]] QRectF freeRoom(const Path& outline, const std::vector<double>& levelHeightsMm);

}  // namespace coutil
