#include "app/command_line/surroundings.h"

#include <QGuiApplication>
#include <cstdio>

#include "ui/words/users_language.h"

namespace coutil {
namespace {

// A message of ours is one line that says what to do; Qt's remarks on its surroundings are not.
void tellOnlyTheWorst(QtMsgType type, const QMessageLogContext& /*where*/, const QString& text) {
    if (type == QtFatalMsg) std::fputs(qPrintable(text + QLatin1Char('\n')), stderr);
}

}  // namespace

Surroundings::Surroundings(bool needsLetters) {
    qInstallMessageHandler(&tellOnlyTheWorst);
    if (needsLetters) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
        app_ = std::make_unique<QGuiApplication>(count_, words_);
    } else {
        app_ = std::make_unique<QCoreApplication>(count_, words_);
    }
    speakUsersLanguage(*app_);
}

}  // namespace coutil
