#include "core/alterations/upward_edge.h"

namespace coutil {

UpwardEdge upwardOf(const Edge& edge) {
    if (edge.runsUp) return {edge.path, *edge.waistMarkAtMm, true};
    return {reversed(edge.path), lengthMm(edge.path) - *edge.waistMarkAtMm, false};
}

void setUpward(Edge& edge, const UpwardEdge& upwards) {
    edge.path = edge.runsUp ? upwards.path : reversed(upwards.path);
    edge.waistMarkAtMm =
        edge.runsUp ? upwards.waistAtMm : lengthMm(upwards.path) - upwards.waistAtMm;
}

}  // namespace coutil
