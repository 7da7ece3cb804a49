#pragma once

#include "core/comparison/comparison.h"

namespace coutil::comparison {

// Every edge that both panels have, by name: where it moved most.
[[nodiscard]] std::vector<EdgeComparison> compareEdges(const Panel& a, const Panel& b,
                                                       const Vector& shiftOfB);

}  // namespace coutil::comparison
