#include "core/alterations/lay_on_waist.h"

#include <cmath>

namespace coutil {

Placement turnAbout(const Point& centre, double rad) {
    Placement placement;
    placement.turnRad = rad;
    placement.shift = centre - placed(centre, placement);
    return placement;
}

std::optional<Point> waistMarkOf(const Edge& edge) {
    if (!edge.waistMarkAtMm || edge.path.isEmpty()) return std::nullopt;
    return pointAtLength(edge.path, *edge.waistMarkAtMm);
}

std::optional<Placement> layingOnWaist(const Edge& front, const Edge& back) {
    const auto frontMark = waistMarkOf(front);
    const auto backMark = waistMarkOf(back);
    if (!frontMark || !backMark) return std::nullopt;
    const Vector across = *backMark - *frontMark;
    Placement placement = turnAbout(*frontMark, -std::atan2(across.y(), across.x()));
    placement.shift.y() -= frontMark->y();
    return placement;
}

}  // namespace coutil
