#include "core/pattern/pattern.h"

namespace coutil {

std::string_view keyOf(EdgeRole role) {
    switch (role) {
        case EdgeRole::seam:
            return "seam";
        case EdgeRole::top:
            return "top";
        case EdgeRole::bottom:
            return "bottom";
        case EdgeRole::opening:
            return "opening";
        case EdgeRole::fold:
            return "fold";
        case EdgeRole::neck:
            return "neck";
        case EdgeRole::armhole:
            return "armhole";
        case EdgeRole::shoulder:
            return "shoulder";
        case EdgeRole::dartLeg:
            return "dart_leg";
    }
    return {};
}

const Edge& edgeAt(const Pattern& pattern, const EdgeRef& ref) {
    return pattern.panels[ref.panel].edges[ref.edge];
}

Path outlineOf(const Panel& panel) {
    Path outline;
    for (const Edge& edge : panel.edges) {
        outline.pieces.insert(outline.pieces.end(), edge.path.pieces.begin(),
                              edge.path.pieces.end());
    }
    return outline;
}

std::vector<Placement> masterPlacements(const Pattern& pattern, double spaceMm) {
    std::vector<Placement> placements;
    double nextMm = 0;
    for (const Panel& panel : pattern.panels) {
        const Box box = boundsOf(outlineOf(panel));
        placements.push_back({.shift = Vector(nextMm - box.lowest.x(), 0)});
        nextMm += box.widthMm() + spaceMm;
    }
    return placements;
}

}  // namespace coutil
