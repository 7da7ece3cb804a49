#include "core/block/edge_allowance.h"

namespace coutil {

double allowanceMm(const AllowanceStyle& style, const Panel& panel, const Edge& edge) {
    if (edge.role == EdgeRole::fold) return 0;
    const auto own = style.byEdgeMm.find(panel.name + "/" + edge.name);
    if (own != style.byEdgeMm.end()) return own->second;
    switch (edge.role) {
        case EdgeRole::opening:
            return style.openingMm;
        case EdgeRole::top:
        case EdgeRole::neck:
        case EdgeRole::armhole:
            return style.isTopBound ? 0 : style.edgeMm;
        case EdgeRole::bottom:
            return style.isBottomBound ? 0 : style.edgeMm;
        default:
            return style.seamMm;
    }
}

}  // namespace coutil
