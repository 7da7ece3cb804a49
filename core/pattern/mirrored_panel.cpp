#include "core/pattern/mirrored_panel.h"

#include <algorithm>

namespace coutil {

Path mirrored(const Path& path) {
    Path over = path;
    for (Cubic& c : over.pieces)
        c = {mirrored(c.p0), mirrored(c.p1), mirrored(c.p2), mirrored(c.p3)};
    return over;
}

std::vector<Edge> mirrored(const std::vector<Edge>& edges) {
    std::vector<Edge> over = edges;
    if (over.size() > 1) std::reverse(over.begin() + 1, over.end());
    for (Edge& edge : over) {
        if (edge.waistMarkAtMm) edge.waistMarkAtMm = lengthMm(edge.path) - *edge.waistMarkAtMm;
        edge.path = reversed(mirrored(edge.path));
        edge.runsUp = edge.waistMarkAtMm && !edge.runsUp;
    }
    return over;
}

}  // namespace coutil
