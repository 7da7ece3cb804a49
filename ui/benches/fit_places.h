#pragma once

#include <optional>
#include <vector>

#include "core/alterations/mark.h"
#include "core/pattern/pattern.h"
#include "ui/canvas/table_scene.h"

// Where marks lie on a pattern, and what place of a mark the pointer means.
namespace coutil {

// A place on one panel, in its frame. `across` (unit length) is the way a seam is pinned or opened
// there, or the way something is to move.
struct MarkSpot {
    std::size_t panel = 0;
    Point at = Point::Zero();
    Vector across = Vector::UnitX();
    bool isFirst = true;  // of the spots on this side: the one with the words
};

// Every place a mark shows at: both edges of its seam, on the left and right panels it concerns.
// Empty where the pattern does not have its place.
[[nodiscard]] std::vector<MarkSpot> spotsOf(const Mark& mark, const Pattern& pattern);

// The seam position of the place of an edge nearest to a point of its panel's frame, in whole
// millimetres; nothing for an edge without waist mark.
[[nodiscard]] std::optional<double> seamPositionNear(const Edge& edge, const Point& point);

// The seam an edge belongs to by name, "centre front" or "centre back"; empty for other edges.
[[nodiscard]] std::string seamNameOf(const Pattern& pattern, const EdgeRef& edge);

// The place a mark of this kind gets when the pointer is at `mm` on `place` of the scene of a
// pattern laid out by `placements`, and the side of the panel there. Keeps to kinds that fit what
// is pointed at: a mark between seams becomes one of a top or bottom edge there.
struct PointedMark {
    MarkKind kind = MarkKind::pinned;
    MarkPlace place;
    BodySide side = BodySide::both;
};
[[nodiscard]] std::optional<PointedMark> markPointedAt(const Pattern& pattern,
                                                       const std::vector<Placement>& placements,
                                                       const TablePlace& place, const QPointF& mm,
                                                       const Mark& draft);

}  // namespace coutil
