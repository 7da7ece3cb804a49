#include "ui/projecting/projector_calibration.h"

namespace coutil {

namespace {

bool isPossible(double pxPerMm) {
    return pxPerMm >= kFewestPxPerMm && pxPerMm <= kMostPxPerMm;  // false for what is no number
}

}  // namespace

std::optional<ProjectorCalibration> calibrationFrom(const QSizeF& shownPx,
                                                    const QSizeF& measuredMm) {
    if (!(measuredMm.width() > 0) || !(measuredMm.height() > 0)) return std::nullopt;
    const ProjectorCalibration found{shownPx.width() / measuredMm.width(),
                                     shownPx.height() / measuredMm.height()};
    if (!isPossible(found.acrossPxPerMm) || !isPossible(found.upPxPerMm)) return std::nullopt;
    return found;
}

QSizeF squarePx(const ProjectorCalibration& calibration, double sideMm) {
    return {sideMm * calibration.acrossPxPerMm, sideMm * calibration.upPxPerMm};
}

}  // namespace coutil
