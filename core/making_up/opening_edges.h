#pragma once

#include <optional>

#include "core/pattern/pattern.h"

namespace coutil {

// The edges of the left and the right side that close together: twice the same one where the
// pattern is a half.
struct OpeningEdges {
    EdgeRef left;
    EdgeRef right;

    bool operator==(const OpeningEdges&) const = default;
};

// The laced edges at the centre back, and those of a front that opens (busk); nothing where there
// are none.
[[nodiscard]] std::optional<OpeningEdges> backOpening(const Pattern& pattern);
[[nodiscard]] std::optional<OpeningEdges> frontOpening(const Pattern& pattern);

// What both edges have, in seam positions, mm: how far up from the waist mark and how far down.
// Where one side is longer than the other, the shorter one's.
struct SharedStretch {
    double topMm = 0;
    double bottomMm = 0;       // below the waist: negative
    double longerAboveMm = 0;  // how much the longer edge has beyond it
    double longerBelowMm = 0;

    bool operator==(const SharedStretch&) const = default;
};
[[nodiscard]] SharedStretch sharedStretchOf(const Pattern& pattern, const OpeningEdges& edges);

// The point at a seam position and a distance from the edge into the panel, square to the edge.
// Nothing where the edge ends before it.
[[nodiscard]] std::optional<Point> pointBesideEdge(const Edge& edge, double positionMm,
                                                   double inwardMm);

}  // namespace coutil
