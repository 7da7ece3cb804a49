#pragma once

#include <vector>

#include "core/comparison/compared_half.h"

namespace coutil::comparison {

// Girth of all panels at a height, mm, with a lacing gap; nothing where it does not cross them all.
[[nodiscard]] std::optional<double> girthAtHeightMm(const Compared& compared, double heightMm,
                                                    double lacingGapMm);

[[nodiscard]] std::vector<LevelComparison> compareLevels(const Compared& a, const Compared& b);

[[nodiscard]] std::vector<EdgeHeightComparison> compareEdgeHeights(const Compared& a,
                                                                   const Compared& b);

}  // namespace coutil::comparison
