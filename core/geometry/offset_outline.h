#pragma once

#include <vector>

#include "core/geometry/path.h"
#include "core/problems/problem.h"

namespace coutil {

// One edge of a closed outline with the width it is offset by to its outer side, mm, 0 allowed.
struct OffsetEdge {
    Path path;
    double widthMm = 0;
};

// How the cutting line goes round a corner where the outline turns towards the panel.
// - mitred: the two offset lines run on until they meet.
// - bevelled: cut straight across, square to the bisector, no nearer to the corner than the
//   narrower of the two widths.
// - turnedBackOverFirst (Second): the allowance of the edge before (after) the corner ends on the
//   mirror image of the other edge's cutting line, mirrored over the tangent of the fold edge at
//   the corner. Folded over along the sewing line it lies on the panel edge to edge.
// A mitre or a turned-back end that would reach further than kLongestCornerReach times the wider
// width from the corner is bevelled instead; turning back a width of 0 is mitring.
enum class CornerTreatment { mitred, bevelled, turnedBackOverFirst, turnedBackOverSecond };
inline constexpr double kLongestCornerReach = 3;

// A corner as it was built. Everything about it that differs from the plain offset of the two edges
// lies within reachMm of it (its corner zone).
struct OffsetCorner {
    Point at = Point::Zero();
    CornerTreatment treatment = CornerTreatment::mitred;
    double reachMm = 0;
};

// The line round an outline at the asked widths.
struct OffsetOutline {
    std::vector<Point> points;  // closed, counter-clockwise, on the ink grid, first not repeated;
                                // within kCutFlatnessMm of the true offset
    Path path;                  // the same as cubic pieces, within kOffsetMm of the true offset
    std::vector<OffsetCorner> corners;  // entry k: between edge k and the one after it
};

// Offsets a closed, simple, counter-clockwise outline, each edge by its own width. corners[k]
// treats the corner between edge k and the next; an empty list mitres all. Corners inside an edge
// are mitred. Where the outline turns away from the panel the offset lines meet inside.
//
// The result is the outer boundary of everything the edges sweep moving outward by their widths,
// cleaned on the grid of kInkGridMm: a simple polygon. It is verified before it is returned:
// nowhere nearer to an edge than its width, nowhere farther than kOffsetMm from the width of the
// nearest edge (both outside corner zones), and the outline lies inside.
//
// Problems, all with a place: offsetLostPart (warning; "value" = length of sewing line, or the size
// of an enclosed gap, whose allowance has no line of its own, mm). Errors, without a value:
// offsetTooNear and offsetTooFar ("value" = distance found, negative where the sewing line comes
// out; "limit" = width asked), outlineOpen (ends that do not meet, an edge without length, numbers
// that are none), outlineCrossesItself (also: clockwise), styleValueOutOfRange (a width below 0).
[[nodiscard]] Outcome<OffsetOutline> offsetOutline(const std::vector<OffsetEdge>& edges,
                                                   const std::vector<CornerTreatment>& corners);

}  // namespace coutil
