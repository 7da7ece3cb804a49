#pragma once

#include <optional>

#include "core/alterations/alteration.h"
#include "core/alterations/line_in_panel.h"
#include "core/pattern/pattern.h"

namespace coutil {

// Where a panel is cut: from the mouth on its top or bottom line to the hinge on another edge.
struct PanelCut {
    Point mouth = Point::Zero();
    Point hinge = Point::Zero();
    EdgeLine mouthLine = EdgeLine::top;
    std::size_t hingeEdge = 0;
    double hingeAlongMm = 0;  // as the place says

    [[nodiscard]] double distanceMm() const { return (mouth - hinge).norm(); }
};

// The point of a place; nothing where its edge is not there or too short. Top and bottom lines
// count from the front corner, all others from the waist mark.
[[nodiscard]] std::optional<Point> pointOf(const Panel& panel, const EdgePlace& place);

// Nothing where a place is not there, the mouth is on no top or bottom line, or the hinge on the
// mouth's own line.
[[nodiscard]] std::optional<PanelCut> cutOf(const Panel& panel, const EdgePlace& mouth,
                                            const EdgePlace& hinge);

// The panel with one part turned about the hinge by `rad` (positive opens), rigidly: with the hinge
// on the opposite line the parts in front and behind keep their long edges as they are; with the
// hinge on a long edge the corner beyond it turns, and the edge bends over 40 mm at the hinge
// without changing its length. Top and bottom line are drawn again through the turned ends, keeping
// their angles against the long edges. Laid back on its waist (layingOnWaist).
struct OpenedPanel {
    Panel panel;
    Point hinge = Point::Zero();  // where the hinge has come to
};
[[nodiscard]] std::optional<OpenedPanel> openedAboutHinge(const Panel& panel, const PanelCut& cut,
                                                          double rad);

}  // namespace coutil
