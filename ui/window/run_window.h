#pragma once

#include <QStringList>

class QApplication;

namespace coutil {

// Opens the window, with the first of `files` in it when there is one (further files get windows of
// their own), and runs until it is closed. Returns the program's exit code.
int runWindow(QApplication& app, const QStringList& files);

}  // namespace coutil
