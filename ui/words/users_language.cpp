#include "ui/words/users_language.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>

namespace coutil {

namespace {

// LC_ALL=C asks for plain English, as scripts do; a LANGUAGE left from the desktop does not count
// then (as in gettext; Qt would follow it).
bool isPlainEnglishAsked() {
    if (QLocale() != QLocale::system()) return false;
    for (const char* name : {"LC_ALL", "LC_MESSAGES", "LANG"}) {
        const QString value = qEnvironmentVariable(name).section(QLatin1Char('.'), 0, 0);
        if (!value.isEmpty()) return value == QLatin1String("C") || value == QLatin1String("POSIX");
    }
    return false;
}

bool loadOurs(QTranslator& ours) {
    const QString folder = QStringLiteral(":/i18n");
    if (!isPlainEnglishAsked() &&
        ours.load(QLocale(), QStringLiteral("coutil"), QStringLiteral("_"), folder)) {
        return true;
    }
    return ours.load(QStringLiteral("coutil_en"), folder);
}

}  // namespace

void speakUsersLanguage(QCoreApplication& app) {
    auto* ours = new QTranslator(&app);
    if (!loadOurs(*ours)) return;
    QCoreApplication::installTranslator(ours);
    // Qt's words in the language of ours: a dialog in two languages helps nobody. There is no file
    // for English, which Qt speaks by itself.
    auto* qts = new QTranslator(&app);
    if (qts->load(QLocale(ours->language()), QStringLiteral("qtbase"), QStringLiteral("_"),
                  QLibraryInfo::path(QLibraryInfo::TranslationsPath))) {
        QCoreApplication::installTranslator(qts);
    }
}

}  // namespace coutil
