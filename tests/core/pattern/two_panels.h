#pragma once

#include "core/pattern/pattern.h"

// A pattern small enough to reckon by hand: two straight panels of 100 x 200 mm, waist 80 mm above
// the bottom.
namespace coutil::samples {

inline Panel rectanglePanel(const std::string& name, const std::string& frontName,
                            const std::string& backName) {
    const Point a(0, -80);
    const Point b(100, -80);
    const Point c(100, 120);
    const Point d(0, 120);
    Panel panel{.name = name};
    panel.edges = {{.name = "bottom", .role = EdgeRole::bottom, .path = straightPath(a, b)},
                   {.name = backName,
                    .role = EdgeRole::seam,
                    .path = straightPath(b, c),
                    .waistMarkAtMm = 80,
                    .runsUp = true},
                   {.name = "top", .role = EdgeRole::top, .path = straightPath(c, d)},
                   {.name = frontName,
                    .role = EdgeRole::seam,
                    .path = straightPath(d, a),
                    .waistMarkAtMm = 120}};
    panel.grain = {Point(50, -40), Point(50, 70)};
    return panel;
}

inline Pattern twoPanels() {
    Pattern pattern;
    pattern.panels = {rectanglePanel("1", "centre front", "seam 1-2"),
                      rectanglePanel("2", "seam 1-2", "centre back")};
    pattern.seams = {{.name = "1-2", .front = {0, 1}, .back = {1, 3}}};
    pattern.levels = {{.name = "waist",
                       .heightMm = 0,
                       .bodyMm = 460,
                       .targetMm = 450,
                       .patternMm = 450,
                       .lacingGapMm = 50}};
    pattern.lacingGapMm = 50;
    return pattern;
}

}  // namespace coutil::samples
