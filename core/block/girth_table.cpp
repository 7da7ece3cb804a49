#include "core/block/girth_table.h"

#include <algorithm>
#include <functional>
#include <string>

namespace coutil {
namespace {

std::vector<Level> levelsOf(const CorsetFrame& frame, const Style& style) {
    std::vector<Level> levels;
    for (const LevelRow& row : frame.levels) {
        levels.push_back({.name = std::string(keyOf(row.id)),
                          .heightMm = row.heightMm,
                          .bodyMm = row.bodyMm,
                          .targetMm = row.targetMm,
                          .lacingGapMm = row.gapMm});
    }
    for (const OwnLevel& own : style.ownLevels) {
        levels.push_back(
            {.name = own.name, .heightMm = own.heightMm, .lacingGapMm = style.lacingGapMm});
    }
    std::ranges::stable_sort(levels, std::ranges::greater{}, &Level::heightMm);
    return levels;
}

}  // namespace

std::vector<Level> drawnLevels(const CorsetFrame& frame, const Style& style,
                               std::vector<Panel>& panels) {
    std::vector<Level> levels = levelsOf(frame, style);
    for (Level& level : levels) {
        double halfMm = 0;
        std::size_t crossed = 0;
        for (Panel& panel : panels) {
            const auto crossing = crossingAtHeight(panel, level.heightMm);
            if (!crossing) continue;
            panel.levels.push_back({level.name, crossing->front, crossing->back});
            halfMm += crossing->back.x() - crossing->front.x();
            ++crossed;
        }
        if (crossed == panels.size()) level.patternMm = 2 * halfMm + level.lacingGapMm;
    }
    return levels;
}

}  // namespace coutil
