#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

#include "core/pattern/pattern.h"

namespace coutil {

// The four edges of a panel as a channel sees them; indices into its edges.
struct PanelFrame {
    std::size_t bottom = 0;
    std::size_t back = 0;
    std::size_t top = 0;
    std::size_t front = 0;
};

// Nothing where a panel is not made of a bottom, a back, a top and a front edge.
[[nodiscard]] std::optional<PanelFrame> frameOf(const Panel& panel);

[[nodiscard]] std::optional<std::size_t> edgeWithName(const Panel& panel, std::string_view name);

// The path of an edge in the direction of the seam scale, and the length from its start there to
// the waist mark.
[[nodiscard]] Path upwardsOf(const Edge& edge);
[[nodiscard]] double waistFromBelowMm(const Edge& edge);

// The parallel of an upward line, to the right of it (a negative distance: to the left); less than
// 0.01 mm off the true one. Nothing where the line is hollower than the distance.
[[nodiscard]] std::optional<Path> besideLine(const Path& upwards, double toRightMm);

// The ends of an upward line that run out to an edge of its panel.
struct OpenEnds {
    bool atBottom = true;
    bool atTop = true;
};

// An upward line cut off at the bottom and the top edge of a panel, prolonged straight where it
// does not reach them; an end that is not open stays where it is. Nothing where it does not meet
// them.
[[nodiscard]] std::optional<Path> toRims(const Panel& panel, const PanelFrame& frame,
                                         const Path& upwards, const OpenEnds& ends);

// Along an upward line from its start to the height of the waist; below 0 (beyond its length) where
// it starts above (ends below) the waist.
[[nodiscard]] double waistAlongMm(const Path& upwards);

}  // namespace coutil
