#pragma once

#include <vector>

#include "core/pattern/pattern.h"

namespace coutil {

// How long an edge is to be over and under its waist mark.
struct WantedLengths {
    EdgeRef edge;
    SeamLengths lengths;
};

// Finishes an alteration that has moved long edges: `before` is the pattern it began with, `moved`
// the same pattern (same panels, edges, seams) with other paths on some of its long edges (their
// waist marks need not be right). Every long edge that changed gets its waist mark where it crosses
// y = 0 and is cut again to the lengths it had in `before`, or to those wanted; an edge named in
// `wanted` is cut even if its path is the same. Then the top and bottom lines are drawn again
// (draw_lines.h), and levels, girths and grain lines of the panels that changed are taken anew. A
// panel whose edges are what they were is the same, bit for bit. An edge that no longer crosses the
// waist is left with its old waist mark's place nearest to it.
void settle(const Pattern& before, Pattern& moved, const std::vector<WantedLengths>& wanted = {});

// Only the first step: waist marks, and edges cut to their lengths.
void cutLongEdges(const Pattern& before, Pattern& moved, const std::vector<WantedLengths>& wanted);

// Only the last step: levels, girths and grain of the panels whose edges differ from `before`.
void refreshFigures(const Pattern& before, Pattern& pattern);

}  // namespace coutil
