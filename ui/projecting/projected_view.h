#pragma once

#include <QPointF>
#include <QSizeF>
#include <QTransform>

#include "ui/projecting/projector_calibration.h"

namespace coutil {

// Where the drawing lies under the projector: which place of it (mm, y up) is in the middle of the
// screen, how far it is turned there, and whether it is turned over.
struct ProjectedView {
    QPointF middleMm;
    double turnDeg = 0;  // anticlockwise on the table
    bool isTurnedOver = false;

    bool operator==(const ProjectedView&) const = default;
};

// From millimetres of the drawing (y up) to pixels of a screen of that size (y down), such that the
// projector throws every millimetre as one, across, up and at every angle: the drawing is turned
// before the two scales are applied. Rounding below 1e-9 px.
[[nodiscard]] QTransform projection(const ProjectedView& view,
                                    const ProjectorCalibration& calibration,
                                    const QSizeF& screenPx);

// The view moved so that the thrown drawing goes by so many millimetres of the table, x right and
// y up as the screen shows them.
[[nodiscard]] ProjectedView movedOnTable(const ProjectedView& view, const QPointF& byMm);

// Turned by so many degrees about the middle of the screen, within -180 (exclusive) to 180.
[[nodiscard]] ProjectedView turnedOnTable(const ProjectedView& view, double byDeg);

}  // namespace coutil
