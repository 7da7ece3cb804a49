#include "core/alterations/outlines_apart.h"

#include <algorithm>
#include <limits>

#include "core/geometry/tolerances.h"

namespace coutil {

double pathsApartMm(const Path& first, const Path& second) {
    if (first == second) return 0;
    double farthestMm = 0;
    const auto look = [&](const Path& from, const Path& to) {
        for (const Point& point : flattened(from, tolerance::kCheckFlatnessMm))
            farthestMm = std::max(farthestMm, closestOn(to, point).distanceMm);
    };
    look(first, second);
    look(second, first);
    return farthestMm;
}

double outlinesApartMm(const Pattern& first, const Pattern& second) {
    constexpr double kNotTheSame = std::numeric_limits<double>::infinity();
    if (first.panels.size() != second.panels.size()) return kNotTheSame;
    double farthestMm = 0;
    for (std::size_t p = 0; p < first.panels.size(); ++p) {
        const std::vector<Edge>& edges = first.panels[p].edges;
        const std::vector<Edge>& others = second.panels[p].edges;
        if (edges.size() != others.size()) return kNotTheSame;
        for (std::size_t e = 0; e < edges.size(); ++e)
            farthestMm = std::max(farthestMm, pathsApartMm(edges[e].path, others[e].path));
    }
    return farthestMm;
}

}  // namespace coutil
