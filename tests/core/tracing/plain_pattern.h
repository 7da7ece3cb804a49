#pragma once

#include "core/pattern/pattern.h"

// Invented patterns for the tests of the tracings: small enough to check by hand.
namespace coutil::samples {

// A panel 100 mm wide with straight sides from 150 mm below to 200 mm above the waist, its back
// edge leaning outwards by leanMm at the top.
inline Panel plainPanel(const std::string& name, EdgeRole front, EdgeRole back, double leanMm = 0) {
    Panel panel;
    panel.name = name;
    panel.edges = {
        {"bottom", EdgeRole::bottom, straightPath({0, -150}, {100, -150}), std::nullopt, false},
        {"back edge", back, straightPath({100, -150}, {100 + leanMm, 200}), 150.0, true},
        {"top", EdgeRole::top, straightPath({100 + leanMm, 200}, {0, 200}), std::nullopt, false},
        {"front edge", front, straightPath({0, 200}, {0, -150}), 200.0, false}};
    panel.edges[1].waistMarkAtMm = lengthMm(panel.edges[1].path) * 150 / 350;
    panel.grain = {Point(50, -80), Point(50, 120)};
    panel.levels = {{"waist", {0, 0}, {100 + leanMm * 150 / 350, 0}}};
    return panel;
}

// Two such panels: centre front on the fold, one seam, an opening at the back.
inline Pattern plainPattern() {
    Pattern pattern;
    pattern.panels = {plainPanel("1", EdgeRole::fold, EdgeRole::seam),
                      plainPanel("2", EdgeRole::seam, EdgeRole::opening, 20)};
    pattern.panels[0].isOnFold = true;
    pattern.panels[0].edges[1].name = "seam 1-2";
    pattern.panels[0].edges[3].name = "centre front";
    pattern.panels[1].edges[1].name = "centre back";
    pattern.panels[1].edges[3].name = "seam 1-2";
    pattern.seams = {{"1-2", {0, 1}, {1, 3}, 0}};
    return pattern;
}

}  // namespace coutil::samples
