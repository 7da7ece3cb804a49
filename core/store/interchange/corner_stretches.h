#pragma once

#include <vector>

#include "core/geometry/path.h"

namespace coutil::interchange {

// A closed line taken apart at its corners, where it turns by more than tolerance::
// kStraightOnCosine allows: stretches in order, the first beginning at the first corner; the line
// itself where it has none.
[[nodiscard]] std::vector<Path> cornerStretches(const Path& closed);

}  // namespace coutil::interchange
