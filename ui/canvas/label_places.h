#pragma once

#include <QRectF>
#include <vector>

#include "ui/canvas/scene_painter.h"

namespace coutil {

// Where a panel's label stands on the screen; a size of 0 leaves it out.
struct LabelPlace {
    QRectF box;
    int sizePx = 0;
    bool isInside = false;
};

// One place for the label of every panel, never on a line. All stand in their panels, in one size,
// where all find room there; else all beneath (or above) their panels; where even that is not free
// for some, each as it can. Beneath, nothing is written below the scale at which a label would be
// wider than panel and gap.
[[nodiscard]] std::vector<LabelPlace> labelPlaces(const TableLook& look);

}  // namespace coutil
