#include "core/comparison/compare_edges.h"

#include <algorithm>

#include "core/geometry/largest_distance.h"

namespace coutil::comparison {
namespace {

// mm from the front corner on a top or bottom edge, else the seam position.
std::optional<double> alongMm(const Edge& edge, const PathPosition& at) {
    const double fromStartMm = lengthToMm(edge.path, at);
    // Counter-clockwise: the bottom starts at the front corner, the top ends there.
    if (edge.role == EdgeRole::bottom) return fromStartMm;
    if (edge.role == EdgeRole::top) return lengthMm(edge.path) - fromStartMm;
    if (!edge.waistMarkAtMm) return std::nullopt;
    const double fromMarkMm = fromStartMm - *edge.waistMarkAtMm;
    return edge.runsUp ? fromMarkMm : -fromMarkMm;
}

EdgeComparison compared(const Edge& a, const Edge& b, const Vector& shiftOfB) {
    const bool isShifted = shiftOfB != Vector::Zero();
    const LargestDistance largest =
        largestDistance(a.path, isShifted ? placed(b.path, Placement{.shift = shiftOfB}) : b.path);
    return {.edge = a.name,
            .role = a.role,
            .largestMm = largest.distanceMm,
            .onA = pointAt(a.path, largest.onFirst),
            .onB = pointAt(b.path, largest.onSecond),
            .alongAMm = alongMm(a, largest.onFirst),
            .alongBMm = alongMm(b, largest.onSecond)};
}

}  // namespace

std::vector<EdgeComparison> compareEdges(const Panel& a, const Panel& b, const Vector& shiftOfB) {
    std::vector<EdgeComparison> edges;
    for (const Edge& edge : a.edges) {
        const auto other = std::ranges::find(b.edges, edge.name, &Edge::name);
        if (other == b.edges.end() || edge.path.isEmpty() || other->path.isEmpty()) continue;
        edges.push_back(compared(edge, *other, shiftOfB));
    }
    return edges;
}

}  // namespace coutil::comparison
