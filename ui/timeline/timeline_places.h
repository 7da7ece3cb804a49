#pragma once

#include <QPoint>
#include <QSize>
#include <vector>

#include "core/revision/timeline.h"

namespace coutil {

// Where the entries of a timeline stand on the strip.
struct TimelinePlaces {
    std::vector<QPoint> dots;  // middle of each entry's dot or cross
    QSize size;                // of all of it
    int rows = 0;
};

// Entries stand in their order from left to right, each behind the words of the one before it in
// its row. Lanes whose branches are over lend their row to later branches, so that rows stay few.
// `widths` are those of the words behind the dots.
[[nodiscard]] TimelinePlaces timelinePlaces(const std::vector<TimelineEntry>& entries,
                                            const std::vector<int>& widths, int rowHeightPx);

}  // namespace coutil
