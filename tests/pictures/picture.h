#pragma once

#include <QDir>
#include <QWidget>

namespace coutil {

// Lets everything that waits in the event queue (layouts, a plan from the worker) arrive.
void settle(int milliseconds);

// Writes NAME.png; tells it, or that it could not.
[[nodiscard]] bool savePicture(QWidget& window, const QDir& folder, const QString& name);

}  // namespace coutil
