#include "core/pattern/level_lines.h"

#include <algorithm>
#include <cstddef>

namespace coutil {
namespace {

// What the panels measure at a level by the lines drawn on them.
std::optional<double> girthMm(const std::vector<Panel>& panels, const Level& level) {
    double sumMm = 0;
    for (const Panel& panel : panels) {
        const auto line = std::ranges::find(panel.levels, level.name, &LevelLine::level);
        if (line == panel.levels.end()) return std::nullopt;
        const double widthMm = line->back.x() - line->front.x();
        sumMm += panel.side == PanelSide::both ? 2 * widthMm : widthMm;
    }
    return sumMm + level.lacingGapMm;
}

}  // namespace

void drawLevels(const std::vector<Level>& levels, Panel& panel) {
    panel.levels.clear();
    for (const Level& level : levels) {
        if (const auto crossing = crossingAtHeight(panel, level.heightMm))
            panel.levels.push_back({level.name, crossing->front, crossing->back});
    }
}

void measureGirths(const std::vector<Panel>& panels, std::vector<Level>& levels) {
    for (Level& level : levels) level.patternMm = girthMm(panels, level);
}

}  // namespace coutil
