#include "core/pattern/pattern.h"

#include <algorithm>
#include <array>

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
    std::array<double, 2> nextMm{};
    double lowestMm = 0;
    double highestMm = 0;
    for (const Panel& panel : pattern.panels) {
        const Box box = boundsOf(outlineOf(panel));
        const bool isRight = panel.side == PanelSide::right;
        double& next = nextMm.at(isRight ? 1 : 0);
        placements.push_back({.shift = Vector(next - box.lowest.x(), 0)});
        next += box.widthMm() + spaceMm;
        (isRight ? highestMm : lowestMm) =
            isRight ? std::max(highestMm, box.highest.y()) : std::min(lowestMm, box.lowest.y());
    }
    for (std::size_t p = 0; p < placements.size(); ++p) {
        if (pattern.panels[p].side == PanelSide::right)
            placements[p].shift.y() = lowestMm - spaceMm - highestMm;
    }
    return placements;
}

}  // namespace coutil
