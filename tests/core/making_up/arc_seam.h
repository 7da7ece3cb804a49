#pragma once

#include "tests/core/geometry/known_curves.h"
#include "tests/core/pattern/two_panels.h"

namespace coutil::samples {

// Two panels whose common seam is an arc of so many mm with a radius, the waist in its middle.
inline Pattern withArc(double radiusMm, double arcMm) {
    const double half = arcMm / radiusMm / 2;
    Path arc{{testing::arcCubic(radiusMm, -half, 0)}};
    arc = joined(arc, Path{{testing::arcCubic(radiusMm, 0, half)}});
    arc = placed(arc, Placement{.shift = Vector(100 - radiusMm, 0)});
    Pattern pattern = twoPanels();
    auto& front = pattern.panels[0].edges;
    front[1].path = arc;
    front[1].waistMarkAtMm = arcMm / 2;
    front[0].path = straightPath(front[0].path.start(), arc.start());
    front[2].path = straightPath(arc.end(), front[2].path.end());
    auto& back = pattern.panels[1].edges;
    back[3].path = reversed(placed(arc, Placement{.shift = Vector(-100, 0)}));
    back[3].waistMarkAtMm = arcMm / 2;
    back[0].path = straightPath(back[3].path.end(), back[0].path.end());
    back[2].path = straightPath(back[2].path.start(), back[3].path.start());
    return pattern;
}

}  // namespace coutil::samples
