#include "ui/projecting/projected_view.h"

#include <cmath>

namespace coutil {

namespace {

// Drawing to table, both in mm with y up and the middle of the screen at 0.
QTransform onTable(const ProjectedView& view) {
    QTransform turned;
    turned.rotate(view.turnDeg);  // y runs up here, so this is anticlockwise
    if (view.isTurnedOver) turned.scale(-1, 1);
    turned.translate(-view.middleMm.x(), -view.middleMm.y());
    return turned;
}

}  // namespace

QTransform projection(const ProjectedView& view, const ProjectorCalibration& calibration,
                      const QSizeF& screenPx) {
    const QTransform toScreen(calibration.acrossPxPerMm, 0, 0, -calibration.upPxPerMm,
                              screenPx.width() / 2, screenPx.height() / 2);
    return onTable(view) * toScreen;
}

ProjectedView movedOnTable(const ProjectedView& view, const QPointF& byMm) {
    ProjectedView moved = view;
    moved.middleMm = onTable(view).inverted().map(-byMm);
    return moved;
}

ProjectedView turnedOnTable(const ProjectedView& view, double byDeg) {
    ProjectedView turned = view;
    turned.turnDeg = std::remainder(view.turnDeg + byDeg, 360.0);
    if (turned.turnDeg <= -180) turned.turnDeg += 360;
    return turned;
}

}  // namespace coutil
