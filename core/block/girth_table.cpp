#include "core/block/girth_table.h"

#include <algorithm>
#include <functional>
#include <string>

#include "core/pattern/level_lines.h"

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
    for (Panel& panel : panels) drawLevels(levels, panel);
    measureGirths(panels, levels);
    return levels;
}

}  // namespace coutil
