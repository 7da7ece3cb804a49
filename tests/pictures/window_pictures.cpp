// Pictures of the real window with the demo singer: every bench, two sizes, light and dark.
// coutil_pictures FOLDER [LANGUAGE [FOLIO]]; of a folio the Compare bench only.
#include <QApplication>
#include <QDir>
#include <QFont>
#include <QLocale>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <cstdio>

#include "core/store/folio_file.h"
#include "tests/pictures/compare_pictures.h"
#include "tests/pictures/fit_pictures.h"
#include "tests/pictures/picture.h"
#include "tests/pictures/projector_pictures.h"
#include "tests/ui/timeline/grown_garment.h"
#include "ui/benches/bench.h"
#include "ui/window/confirm_dialog.h"
#include "ui/window/demo_singer.h"
#include "ui/window/main_window.h"
#include "ui/window/theme.h"
#include "ui/words/users_language.h"

namespace {

using namespace coutil;

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

bool takeEveryBench(MainWindow& window, const QDir& folder, const QString& suffix) {
    bool all = savePicture(window, folder, QStringLiteral("start") + suffix);
    auto singer = demoSinger();
    if (!singer) return false;
    window.document().open(*singer, {});
    all = takeAll(window, folder, suffix) && all;
    all = takeProjecting(window, folder, suffix) && all;
    all = takeTimeline(window, folder, suffix) && all;
    all = takeComparing(window, grownFolio(), folder, suffix) && all;
    return takeConfirming(folder, suffix) && all;
}

}  // namespace

int main(int argc, char** argv) {
    if (argc < 2 || argc > 4) {
        std::fputs("coutil_pictures FOLDER [LANGUAGE [FOLIO]]\n", stderr);
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
    QLocale::setDefault(argc > 2 ? QLocale(QString::fromLocal8Bit(argv[2]))
                                 : QLocale(QLocale::English, QLocale::UnitedKingdom));
    speakUsersLanguage(app);
    QApplication::setFont(QFont(QStringLiteral("DejaVu Sans"), 10));
    const QDir folder(QString::fromLocal8Bit(argv[1]));
    if (!folder.mkpath(QStringLiteral("."))) return 2;
    std::optional<Folio> folio;
    if (argc > 3) {
        auto read = readFolio(argv[3]);
        if (!read || read->garments.empty() || read->garments.front().revisions.size() < 2) {
            std::fputs("no folio with two revisions\n", stderr);
            return 2;
        }
        folio = *std::move(read);
    }

    bool all = true;
    for (const bool isDark : {false, true}) {
        applyTheme(isDark ? Theme::dark : Theme::light);
        for (const QSize size : {QSize(1280, 800), QSize(1920, 1080)}) {
            const QString suffix =
                QStringLiteral("-%1-%2")
                    .arg(size.width())
                    .arg(isDark ? QStringLiteral("dark") : QStringLiteral("light"));
            if (!folio) all = takeFittings(size, folder, suffix) && all;
            MainWindow window;
            window.resize(size);
            window.show();
            settle(300);
            all = (folio ? takeComparing(window, *folio, folder, suffix)
                         : takeEveryBench(window, folder, suffix)) &&
                  all;
        }
    }
    return all ? 0 : 1;
}
