#include <algorithm>

#include "core/pattern/pattern.h"

namespace coutil {
namespace {

bool isLong(const Edge& edge) {
    return edge.role != EdgeRole::top && edge.role != EdgeRole::bottom;
}

}  // namespace

std::optional<LevelCrossing> crossingAtHeight(const Panel& panel, double heightMm) {
    std::optional<Point> front;
    std::optional<Point> back;
    for (const Edge& edge : panel.edges) {
        if (!isLong(edge)) continue;
        for (const PathPosition& place : crossingsAtHeight(edge.path, heightMm)) {
            const Point at = pointAt(edge.path, place);
            // An edge that winds across the height more than once bounds the panel where it is
            // innermost.
            if (edge.runsUp && (!back || at.x() < back->x())) back = at;
            if (!edge.runsUp && (!front || at.x() > front->x())) front = at;
        }
    }
    if (!front || !back) return std::nullopt;
    return LevelCrossing{*front, *back};
}

std::optional<double> widthAtHeightMm(const Panel& panel, double heightMm) {
    const auto crossing = crossingAtHeight(panel, heightMm);
    if (!crossing) return std::nullopt;
    return crossing->back.x() - crossing->front.x();
}

}  // namespace coutil
