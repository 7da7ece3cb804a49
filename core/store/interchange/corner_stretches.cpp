#include "core/store/interchange/corner_stretches.h"

#include "core/geometry/tolerances.h"

namespace coutil::interchange {

std::vector<Path> cornerStretches(const Path& closed) {
    const std::size_t count = closed.pieces.size();
    const auto isCorner = [&](std::size_t i) {
        const Cubic& before = closed.pieces[(i + count - 1) % count];
        return tangentAt(before, 1).dot(tangentAt(closed.pieces[i], 0)) <
               tolerance::kStraightOnCosine;
    };
    std::size_t first = 0;
    while (first < count && !isCorner(first)) ++first;
    if (first == count) return {closed};
    std::vector<Path> stretches;
    for (std::size_t k = 0; k < count; ++k) {
        const std::size_t i = (first + k) % count;
        if (k == 0 || isCorner(i)) stretches.emplace_back();
        stretches.back().pieces.push_back(closed.pieces[i]);
    }
    return stretches;
}

}  // namespace coutil::interchange
