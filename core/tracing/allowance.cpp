#include "core/tracing/allowance.h"

namespace coutil {

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
