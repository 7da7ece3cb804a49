#include "core/tracing/allowance.h"

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

namespace {

// Edges whose allowance is folded over along them when the garment is made up.
bool isFoldedOver(EdgeRole role) {
    return role == EdgeRole::seam || role == EdgeRole::opening || role == EdgeRole::shoulder ||
           role == EdgeRole::dartLeg;
}

// Edges a folded allowance has to end on.
bool isRim(EdgeRole role) {
    return role == EdgeRole::top || role == EdgeRole::bottom || role == EdgeRole::neck ||
           role == EdgeRole::armhole;
}

}  // namespace

CornerTreatment treatmentBetween(EdgeRole first, EdgeRole second) {
    if (isFoldedOver(first) && isRim(second)) return CornerTreatment::turnedBackOverFirst;
    if (isRim(first) && isFoldedOver(second)) return CornerTreatment::turnedBackOverSecond;
    return CornerTreatment::mitred;
}

}  // namespace coutil
