#pragma once

#include <vector>

#include "core/comparison/compared_half.h"
#include "core/comparison/comparison.h"

namespace coutil::comparison {

// All seams and closures of both; `panels` are the registered pairs.
[[nodiscard]] std::vector<SeamComparison> compareSeams(const Compared& a, const Compared& b,
                                                       const std::vector<PanelComparison>& panels);

}  // namespace coutil::comparison
