#pragma once

#include "ui/canvas/table_scene.h"

namespace coutil {

// `count` panels of our own invention side by side: 80 mm wide at the foot, hollowed at the waist
// by 10 mm a side, from 120 mm below to 200 mm above the waist, 24 mm apart; neighbouring edges are
// partners. Levels at 150, 0 and -90 mm.
[[nodiscard]] TableScene inventedScene(int count);

// The hollowed edge of a panel whose lower end is at (x, -120): to the left or to the right.
[[nodiscard]] QPainterPath hollowedEdge(double x, double hollowMm);

}  // namespace coutil
