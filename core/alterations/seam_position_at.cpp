#include "core/alterations/seam_position_at.h"

#include <cmath>

namespace coutil {

std::optional<double> seamPositionAtHeight(const Edge& edge, double heightMm) {
    if (!edge.waistMarkAtMm) return std::nullopt;
    std::optional<double> nearest;
    for (const PathPosition& place : crossingsAtHeight(edge.path, heightMm)) {
        const double fromMarkMm = lengthToMm(edge.path, place) - *edge.waistMarkAtMm;
        const double positionMm = edge.runsUp ? fromMarkMm : -fromMarkMm;
        if (!nearest || std::abs(positionMm) < std::abs(*nearest)) nearest = positionMm;
    }
    return nearest;
}

}  // namespace coutil
