#include "tests/pictures/picture.h"

#include <QApplication>
#include <QElapsedTimer>
#include <cstdio>

namespace coutil {

void settle(int milliseconds) {
    QElapsedTimer timer;
    timer.start();
    do {
        QApplication::processEvents(QEventLoop::AllEvents, 20);
    } while (timer.elapsed() < milliseconds);
}

bool savePicture(QWidget& window, const QDir& folder, const QString& name) {
    const QString file = folder.filePath(name + QStringLiteral(".png"));
    const bool saved = window.grab().save(file);
    std::printf("%s %s\n", saved ? "picture:" : "cannot write", qPrintable(file));
    return saved;
}

}  // namespace coutil
