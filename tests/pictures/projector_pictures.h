#pragma once

#include <QDir>

namespace coutil {

class MainWindow;

// The projector over the tracings on the table: calibrating, a panel in light lines on black, and
// turned in dark lines on white. False where a picture could not be written.
bool takeProjecting(MainWindow& window, const QDir& folder, const QString& suffix);

}  // namespace coutil
