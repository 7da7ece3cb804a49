#pragma once

#include "core/geometry/path.h"

namespace coutil {

// Where two paths are farthest apart.
struct LargestDistance {
    double distanceMm = 0;
    PathPosition onFirst{};
    PathPosition onSecond{};
};

// The largest distance between two paths: from a place on either one to the nearest place on the
// other (Hausdorff's distance), and where that is. The figure is a distance that is there (error
// 1e-6 mm), from stations every 4 mm and a search between the neighbours of the largest: it falls
// short of the true one by less than tolerance::kCompareSearchMm for curves whose radius is nowhere
// below 25 mm (tested); 0 for the same path twice. Neither may be empty.
[[nodiscard]] LargestDistance largestDistance(const Path& first, const Path& second);

}  // namespace coutil
