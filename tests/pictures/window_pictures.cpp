// Pictures of the real window with the demo singer: every bench, two sizes, light and dark.
// coutil_pictures FOLDER
#include <QApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QFont>
#include <QLocale>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <cstdio>

#include "tests/pictures/fit_pictures.h"
#include "tests/ui/timeline/grown_garment.h"
#include "ui/benches/bench.h"
#include "ui/fields/choice_field.h"
#include "ui/window/confirm_dialog.h"
#include "ui/window/demo_singer.h"
#include "ui/window/main_window.h"
#include "ui/window/theme.h"
#include "ui/words/users_language.h"

namespace {

using namespace coutil;

// Lets everything that waits in the event queue (layouts, a plan from the worker) arrive.
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

bool takeAll(MainWindow& window, const QDir& folder, const QString& suffix) {
    bool all = true;
    for (int i = 0; i < window.benches().size(); ++i) {
        window.enterBench(i);
        // The Print bench looks for fewer sheets in the background.
        settle(i + 1 == window.benches().size() ? 6000 : 400);
        const QString name = window.benches().at(i)->benchName().toLower();
        all = savePicture(window, folder, name + suffix) && all;
    }
    return all;
}

// Draft with a garment that has a past: fittings, a branch, two pencils.
bool takeTimeline(MainWindow& window, const QDir& folder, const QString& suffix) {
    window.document().open(grownFolio(), {});
    window.enterBench(1);
    settle(400);
    return savePicture(window, folder, QStringLiteral("timeline") + suffix);
}

// Revision 1 against 3 over each other, enlarged, then side by side.
bool takeComparing(MainWindow& window, const QDir& folder, const QString& suffix) {
    const Folio folio = grownFolio();
    window.document().open(folio, {});
    window.compare({digestOf(folio, 1), {}}, {digestOf(folio, 3), {}});
    auto* factor = window.findChild<ChoiceField*>("compareFactor");
    auto* view = window.findChild<ChoiceField*>("compareView");
    settle(300);
    bool all = savePicture(window, folder, QStringLiteral("compare-over") + suffix);
    factor->setCurrentIndex(1);
    settle(200);
    all = savePicture(window, folder, QStringLiteral("compare-5-times") + suffix) && all;
    view->setCurrentIndex(1);
    settle(300);
    all = savePicture(window, folder, QStringLiteral("compare-beside") + suffix) && all;
    view->setCurrentIndex(0);
    return all;
}

// A window of its own, with fittings of the demo singer.
bool takeFittings(const QSize& size, const QDir& folder, const QString& suffix) {
    const QTemporaryDir folios;
    auto answers = std::make_unique<QueuedAnswers>();
    QueuedAnswers& queued = *answers;
    MainWindow window(std::move(answers));
    window.resize(size);
    window.show();
    window.activateWindow();
    settle(300);
    bool all = true;
    takeFitting(window, queued, folios.path(), [&](const char* name) {
        settle(300);
        all = savePicture(window, folder, QLatin1String(name) + suffix) && all;
    });
    return all;
}

bool takeConfirming(const QDir& folder, const QString& suffix) {
    Problem error;
    error.code = ProblemCode::panelTooNarrow;
    error.panel = "3";
    error.subject = "waist";
    ConfirmDialog dialog({.garment = QStringLiteral("Corset"),
                          .number = 4,
                          .date = "2026-05-02",
                          .by = QStringLiteral("Mira"),
                          .note = QStringLiteral("seam 2-3: 0.4 cm in at +3.5 cm, left"),
                          .problems = {error},
                          .unit = LengthUnit::centimetre});
    dialog.show();
    settle(200);
    return savePicture(dialog, folder, QStringLiteral("confirm") + suffix);
}

}  // namespace

int main(int argc, char** argv) {
    if (argc != 2) {
        std::fputs("coutil_pictures FOLDER\n", stderr);
        return 2;
    }
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    // Nobody's settings and nobody's unsaved work belong in the pictures.
    const QTemporaryDir settings;
    qputenv("HOME", settings.path().toLocal8Bit());
    QStandardPaths::setTestModeEnabled(true);
    QApplication app(argc, argv);
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, settings.path());
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    speakUsersLanguage(app);
    QApplication::setFont(QFont(QStringLiteral("DejaVu Sans"), 10));
    const QDir folder(QString::fromLocal8Bit(argv[1]));
    if (!folder.mkpath(QStringLiteral("."))) return 2;

    bool all = true;
    for (const bool isDark : {false, true}) {
        applyTheme(isDark ? Theme::dark : Theme::light);
        for (const QSize size : {QSize(1280, 800), QSize(1920, 1080)}) {
            const QString suffix =
                QStringLiteral("-%1-%2")
                    .arg(size.width())
                    .arg(isDark ? QStringLiteral("dark") : QStringLiteral("light"));
            all = takeFittings(size, folder, suffix) && all;
            MainWindow window;
            window.resize(size);
            window.show();
            settle(300);
            all = savePicture(window, folder, QStringLiteral("start") + suffix) && all;
            auto singer = demoSinger();
            if (!singer) return 1;
            window.document().open(*singer, {});
            all = takeAll(window, folder, suffix) && all;
            all = takeTimeline(window, folder, suffix) && all;
            all = takeComparing(window, folder, suffix) && all;
            all = takeConfirming(folder, suffix) && all;
        }
    }
    return all ? 0 : 1;
}
