#include "ui/window/run_window.h"

#include <QApplication>
#include <QIcon>
#include <QLibraryInfo>
#include <QLocale>
#include <QProcess>
#include <QTranslator>

#include "ui/window/folio_files.h"
#include "ui/window/main_window.h"
#include "ui/window/theme.h"

namespace coutil {

namespace {

void installTranslators(QApplication& app) {
    auto* ours = new QTranslator(&app);
    if (ours->load(QLocale(), QStringLiteral("coutil"), QStringLiteral("_"),
                   QStringLiteral(":/i18n"))) {
        QApplication::installTranslator(ours);
    }
    auto* qts = new QTranslator(&app);
    if (qts->load(QLocale(), QStringLiteral("qtbase"), QStringLiteral("_"),
                  QLibraryInfo::path(QLibraryInfo::TranslationsPath))) {
        QApplication::installTranslator(qts);
    }
}

}  // namespace

int runWindow(QApplication& app, const QStringList& files) {
    QApplication::setApplicationName(QStringLiteral("coutil"));
    QApplication::setApplicationDisplayName(QString());
    installTranslators(app);
    applyTheme(storedTheme());
    MainWindow window;
    window.show();
    if (!files.isEmpty()) window.files().openFile(files.first());
    window.offerUnsavedWork();
    for (const QString& other : files.mid(1)) {
        QProcess::startDetached(QApplication::applicationFilePath(), {other});
    }
    return QApplication::exec();
}

}  // namespace coutil
