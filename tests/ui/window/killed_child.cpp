// The window as a program of its own, to be killed: killed_child change FOLIO opens the folio,
// types another waist girth and says "changed"; killed_child look tells what the next start offers.
#include <QApplication>
#include <QPushButton>
#include <QStandardPaths>
#include <QTest>
#include <QTimer>
#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <system_error>

#include "ui/benches/measure_bench.h"
#include "ui/benches/measurement_row.h"
#include "ui/document/folio_document.h"
#include "ui/document/state_folder.h"
#include "ui/window/main_window.h"
#include "ui/window/run_window.h"
#include "ui/window/start_screen.h"

namespace {

using namespace coutil;

void say(const QString& words) {
    std::puts(qPrintable(words));
    std::fflush(stdout);
}

bool hasWorkingCopy() {
    std::error_code unknown;
    std::filesystem::directory_iterator files(stateFolder(), unknown);
    return !unknown && files != std::filesystem::directory_iterator();
}

MainWindow& shownWindow() {
    for (QWidget* widget : QApplication::topLevelWidgets()) {
        if (auto* window = qobject_cast<MainWindow*>(widget)) return *window;
    }
    qFatal("no window");
}

void change() {
    MainWindow& window = shownWindow();
    window.enterBench(0);
    auto* measure = qobject_cast<MeasureBench*>(window.benches().front());
    LengthField& field = measure->row(Measurement::waistGirth).field();
    field.setFocus(Qt::MouseFocusReason);
    field.selectAll();
    QTest::keyClicks(&field, "73");
    // What is typed goes to the working copy after a short pause, without the maker's doing.
    if (QTest::qWaitFor([] { return hasWorkingCopy(); })) say("changed");
}

void look() {
    MainWindow& window = shownWindow();
    const auto buttons = window.startScreen().findChildren<QPushButton*>();
    const auto recover = std::ranges::find(buttons, QString("Recover"), &QPushButton::text);
    if (recover == buttons.end()) {
        say("nothing is offered");
    } else {
        (*recover)->click();
        const MeasurementSet* set = window.document().measurementSet();
        say(QString::number(set->valuesMm.at(Measurement::waistGirth)));
    }
    QApplication::exit(0);
}

}  // namespace

int main(int argc, char** argv) {
    QApplication app(argc, argv);
    const QStringList words = QApplication::arguments();
    const bool isToChange = words.value(1) == "change";
    QTimer::singleShot(0, &app, isToChange ? change : look);
    return runWindow(app, words.mid(2));
}
