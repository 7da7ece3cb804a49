#pragma once

#include "core/pattern/pattern.h"

namespace coutil::samples {

// Draws the levels of a half again on its panels, and measures them.
inline void drawLevels(Pattern& pattern) {
    for (Panel& panel : pattern.panels) panel.levels.clear();
    for (Level& level : pattern.levels) {
        level.patternMm = level.lacingGapMm;
        for (Panel& panel : pattern.panels) {
            const auto crossing = crossingAtHeight(panel, level.heightMm);
            panel.levels.push_back({level.name, crossing->front, crossing->back});
            *level.patternMm += 2 * (crossing->back.x() - crossing->front.x());
        }
    }
}

}  // namespace coutil::samples
