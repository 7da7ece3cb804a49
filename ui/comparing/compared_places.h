#pragma once

#include <QPointF>
#include <optional>
#include <string>

#include "ui/comparing/compared_layout.h"

namespace coutil {

// A place that a figure speaks of, wherever its panel is laid.
struct ComparedPlace {
    int pair = -1;              // index of the pair of panels; -1: across all
    std::optional<Point> at{};  // in the frame of the panel that is shown of it
};

// On the named seam or closure, at a seam position of the panel in front (behind, where only that
// one has it).
[[nodiscard]] ComparedPlace placeOnSeam(const ComparedStates& states, const std::string& seam,
                                        PanelSide side, double positionMm);

// In the middle of a level, on the first panel that has it.
[[nodiscard]] ComparedPlace placeOnLevel(const ComparedStates& states, const std::string& level);

// The same on the table or paper.
[[nodiscard]] std::optional<QPointF> spotOf(const ComparedPlace& place,
                                            const ComparedLayout& layout);

}  // namespace coutil
