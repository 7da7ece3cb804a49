#pragma once

#include <cstddef>
#include <optional>

#include "core/block/edge_curve.h"
#include "core/pattern/pattern.h"

namespace coutil {

// A top or bottom line as it lies in its panel: which edge it is and which edges it runs between.
struct LineInPanel {
    std::size_t line = 0;
    std::size_t front = 0;  // the long edges at its ends
    std::size_t back = 0;
    bool isTop = false;
};

// The line of a role in a panel; nothing where there is none or its neighbours are no long edges.
[[nodiscard]] std::optional<LineInPanel> lineInPanel(const Panel& panel, EdgeRole role);

// Its corners by the ends of the long edges, and their upward directions there.
[[nodiscard]] PanelCorners cornersOf(const Panel& panel, const LineInPanel& line);

// The line from front to back, and back into the panel.
[[nodiscard]] Path rightwardsOf(const Panel& panel, const LineInPanel& line);
void setRightwards(Panel& panel, const LineInPanel& line, const Path& rightwards);

// A line (at least one piece) with other ends and end directions (unit length): turned and
// stretched with its chord, then bent by a cubic of its own parameter so that both directions are
// met; pieces keep joining as smoothly as they did.
[[nodiscard]] Path carriedLine(const Path& rightwards, const Point& start, const Point& end,
                               const Vector& startDirection, const Vector& endDirection);

}  // namespace coutil
