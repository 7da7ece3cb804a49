#pragma once

#include <QPointF>
#include <optional>

namespace coutil {

// Where a problem is on a scene: its panel's number (-1: none named), the place in mm.
struct ProblemSpot {
    int panel = -1;
    std::optional<QPointF> atMm;
};

}  // namespace coutil
