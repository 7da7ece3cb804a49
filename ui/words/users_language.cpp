#include "ui/words/users_language.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>

namespace coutil {

namespace {

void install(QCoreApplication& app, const QString& name, const QString& folder) {
    auto* translator = new QTranslator(&app);
    if (translator->load(QLocale(), name, QStringLiteral("_"), folder)) {
        QCoreApplication::installTranslator(translator);
    }
}

}  // namespace

void speakUsersLanguage(QCoreApplication& app) {
    install(app, QStringLiteral("coutil"), QStringLiteral(":/i18n"));
    install(app, QStringLiteral("qtbase"), QLibraryInfo::path(QLibraryInfo::TranslationsPath));
}

}  // namespace coutil
