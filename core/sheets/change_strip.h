#pragma once

#include <vector>

#include "core/comparison/changed_lines.h"

namespace coutil {

// Lines of a panel as they lie on a change piece.
struct LaidPanel {
    std::vector<Edge> edges{};
    std::vector<LevelLine> levels{};
    std::array<Point, 2> grain{Point::Zero(), Point::Zero()};
};

// Both states of one panel in the frame of the piece.
struct LaidChange {
    std::optional<LaidPanel> old{};
    std::optional<LaidPanel> now{};
};
[[nodiscard]] LaidChange laidChange(const Pattern& a, const Pattern& b, const PanelChange& change);

// Heights over the waist that one strip shows.
struct Strip {
    double fromMm = 0;
    double toMm = 0;
};

// The strips in which a panel changed, from below: what changed with some of the line to either
// side, and the level nearest to it. One strip over all of a panel that is new; none for one that
// is gone.
[[nodiscard]] std::vector<Strip> stripsOf(const LaidChange& laid, const PanelChange& change);

// The parts of a path between two heights, in the order of the path.
[[nodiscard]] std::vector<Path> between(const Path& path, const Strip& strip);

}  // namespace coutil
