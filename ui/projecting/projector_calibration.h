#pragma once

#include <QRectF>
#include <optional>

namespace coutil {

// What a projector makes of the screen: how many pixels of the screen lie on one millimetre of the
// table, across and up. The two differ where the projector does not hang square to it.
struct ProjectorCalibration {
    double acrossPxPerMm = 1;
    double upPxPerMm = 1;

    bool operator==(const ProjectorCalibration&) const = default;
};

// Between a projector that throws a pixel 2 cm wide and a screen with 50 pixels to the millimetre;
// neither exists, so figures beyond are slips of typing. Common sense, no source.
inline constexpr double kFewestPxPerMm = 0.05;
inline constexpr double kMostPxPerMm = 50;

// From a rectangle on the screen (px) and what was measured of it on the table (mm). Nothing where
// a measure is not above 0 or the result lies beyond the bounds above.
[[nodiscard]] std::optional<ProjectorCalibration> calibrationFrom(const QSizeF& shownPx,
                                                                  const QSizeF& measuredMm);

// The size in px of a square with that side.
[[nodiscard]] QSizeF squarePx(const ProjectorCalibration& calibration, double sideMm);

}  // namespace coutil
