#pragma once

#include "core/geometry/path.h"
#include "core/pattern/pattern.h"

namespace coutil {

// A long edge of a panel laid so that it runs upwards; the seam position of a place is its length
// from the start less `waistAtMm`.
struct UpwardEdge {
    Path path;
    double waistAtMm = 0;
    // Where the panel lies, seen upwards: left of a back edge, right of a front edge.
    bool hasPanelOnLeft = false;
};

// The edge must have a waist mark.
[[nodiscard]] UpwardEdge upwardOf(const Edge& edge);

// Gives an edge the path and waist mark of `upwards`.
void setUpward(Edge& edge, const UpwardEdge& upwards);

// Unit length, at right angles to `up`, into the panel.
[[nodiscard]] inline Vector inwardOf(const Vector& up, bool hasPanelOnLeft) {
    return hasPanelOnLeft ? Vector(-up.y(), up.x()) : Vector(up.y(), -up.x());
}

}  // namespace coutil
