#include "ui/timeline/timeline_places.h"

#include <algorithm>
#include <limits>

namespace coutil {

namespace {

constexpr int kBeforeFirstPx = 14;
constexpr int kStepPx = 22;    // between dots of different rows
constexpr int kBehindPx = 26;  // from words to the next dot in the row
constexpr int kDotPx = 10;     // from a dot's middle to its words

// The first and last entry of every lane; a branch needs its row from its parent on.
struct Run {
    std::size_t first = std::numeric_limits<std::size_t>::max();
    std::size_t last = 0;
};

std::vector<Run> runsOf(const std::vector<TimelineEntry>& entries) {
    std::vector<Run> runs;
    for (std::size_t i = 0; i < entries.size(); ++i) {
        const TimelineEntry& entry = entries[i];
        if (entry.lane >= runs.size()) runs.resize(entry.lane + 1);
        Run& run = runs[entry.lane];
        run.first = std::min({run.first, i, entry.parent.value_or(i)});
        run.last = std::max(run.last, i);
    }
    return runs;
}

// The lowest row that is free for the whole run of a lane.
std::vector<int> rowsOf(const std::vector<Run>& runs) {
    std::vector<int> rows;
    std::vector<std::vector<Run>> taken;
    for (const Run& run : runs) {
        const auto isFree = [&run](const std::vector<Run>& row) {
            return std::ranges::none_of(row, [&run](const Run& other) {
                return run.first <= other.last && other.first <= run.last;
            });
        };
        auto row = std::ranges::find_if(taken, isFree);
        if (row == taken.end()) row = taken.insert(taken.end(), std::vector<Run>());
        row->push_back(run);
        rows.push_back(static_cast<int>(row - taken.begin()));
    }
    return rows;
}

}  // namespace

TimelinePlaces timelinePlaces(const std::vector<TimelineEntry>& entries,
                              const std::vector<int>& widths, int rowHeightPx) {
    const std::vector<int> rowOfLane = rowsOf(runsOf(entries));
    TimelinePlaces places;
    for (const int row : rowOfLane) places.rows = std::max(places.rows, row + 1);
    std::vector<int> freeFrom(static_cast<std::size_t>(places.rows), kBeforeFirstPx);
    int next = kBeforeFirstPx;
    int right = 0;
    for (std::size_t i = 0; i < entries.size(); ++i) {
        const int row = rowOfLane[entries[i].lane];
        int& free = freeFrom[static_cast<std::size_t>(row)];
        const int x = std::max(next, free);
        places.dots.emplace_back(x, row * rowHeightPx + rowHeightPx / 2);
        next = x + kStepPx;
        free = x + kDotPx + widths[i] + kBehindPx;
        right = std::max(right, free);
    }
    places.size = QSize(right, places.rows * rowHeightPx);
    return places;
}

}  // namespace coutil
