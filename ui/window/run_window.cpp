#include "ui/window/run_window.h"

#include <QApplication>
#include <QIcon>
#include <QProcess>

#include "ui/window/folio_files.h"
#include "ui/window/main_window.h"
#include "ui/window/theme.h"
#include "ui/words/users_language.h"

namespace coutil {

int runWindow(QApplication& app, const QStringList& files) {
    QApplication::setApplicationName(QStringLiteral("coutil"));
    QApplication::setDesktopFileName(QStringLiteral("org.coutil.coutil"));
    QApplication::setWindowIcon(QIcon(QStringLiteral(":/program/org.coutil.coutil.svg")));
    speakUsersLanguage(app);
    applyTheme(storedTheme());
    MainWindow window;
    window.placeOnScreen();
    window.show();
    if (!files.isEmpty()) window.files().openFile(files.first());
    window.offerUnsavedWork();
    for (const QString& other : files.mid(1)) {
        QProcess::startDetached(QApplication::applicationFilePath(), {other});
    }
    return QApplication::exec();
}

}  // namespace coutil
