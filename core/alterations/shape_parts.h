#pragma once

#include <vector>

#include "core/alterations/alteration.h"
#include "core/pattern/pattern.h"

namespace coutil {

// One of the edges a ShapeSeam names and the part of its amount that this edge gives.
struct PartOfEdge {
    EdgeRef edge;
    double part = 0;
};

// All of them, on every side concerned; none where the seam is not there.
[[nodiscard]] std::vector<PartOfEdge> partsOf(const Pattern& pattern, BodySide side,
                                              const ShapeSeam& shape);

}  // namespace coutil
