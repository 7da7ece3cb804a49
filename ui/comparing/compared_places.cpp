#include "ui/comparing/compared_places.h"

#include <algorithm>

namespace coutil {

namespace {

bool isOn(const PanelComparison& pair, PanelSide side) {
    return pair.side == side || pair.side == PanelSide::both || side == PanelSide::both;
}

}  // namespace

ComparedPlace placeOnSeam(const ComparedStates& states, const std::string& seam, PanelSide side,
                          double positionMm) {
    const auto& pairs = states.comparison.panels;
    for (std::size_t i = 0; i < pairs.size(); ++i) {
        if (!isOn(pairs[i], side)) continue;
        for (const Edge& edge : panelShown(states, pairs[i]).edges) {
            if (edge.name != seam && edge.name != "seam " + seam) continue;
            const auto at = pointAtSeamPosition(edge, positionMm);
            if (at) return {static_cast<int>(i), at};
        }
    }
    return {};
}

ComparedPlace placeOnLevel(const ComparedStates& states, const std::string& level) {
    const auto& pairs = states.comparison.panels;
    for (std::size_t i = 0; i < pairs.size(); ++i) {
        const auto& levels = panelShown(states, pairs[i]).levels;
        const auto found = std::ranges::find(levels, level, &LevelLine::level);
        if (found == levels.end()) continue;
        return {static_cast<int>(i), Point((found->front + found->back) / 2)};
    }
    return {};
}

std::optional<QPointF> spotOf(const ComparedPlace& place, const ComparedLayout& layout) {
    const auto pair = static_cast<std::size_t>(place.pair);
    if (place.pair < 0 || pair >= layout.pairs.size() || !place.at) return std::nullopt;
    const Point at = *place.at + layout.pairs[pair].shift;
    return QPointF(at.x(), at.y());
}

}  // namespace coutil
