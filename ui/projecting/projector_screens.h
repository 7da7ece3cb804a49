#pragma once

#include <QString>
#include <optional>

#include "ui/projecting/projector_calibration.h"

class QScreen;

namespace coutil {

// Name of a screen for people: maker and model where it tells them, else its socket, and its size.
[[nodiscard]] QString screenName(const QScreen& screen);

// The screen to project on: the one projected on last, else the first that the window is not on,
// else the window's own. Never nullptr while there is a screen.
[[nodiscard]] QScreen* projectorScreen(const QScreen* window);
void rememberProjectorScreen(const QScreen& screen);
[[nodiscard]] QScreen* screenAfter(
    const QScreen* screen);  // the next one, the first after the last

// What was measured for a screen at its present size, kept in the settings; nothing yet where it
// was never calibrated, or what is kept is no calibration.
[[nodiscard]] std::optional<ProjectorCalibration> keptCalibration(const QScreen& screen);
void keepCalibration(const QScreen& screen, const ProjectorCalibration& calibration);

// What a screen says of itself, which is right for few and for no projector.
[[nodiscard]] ProjectorCalibration claimedCalibration(const QScreen& screen);

}  // namespace coutil
