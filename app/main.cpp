#include <QApplication>
#include <QStringList>
#include <string>
#include <vector>

#include "app/command_line/command_line.h"
#include "app/command_line/exit_code.h"
#include "ui/window/run_window.h"

int main(int argc, char** argv) {
    const std::vector<std::string> words(argv + (argc > 0 ? 1 : 0), argv + argc);
    if (coutil::wantedBy(words) == coutil::Wanted::command)
        return static_cast<int>(coutil::runCommandLine(words));
    if (!coutil::hasDisplay(words)) return static_cast<int>(coutil::ExitCode::badInput);
    QApplication app(argc, argv);
    return coutil::runWindow(app, QApplication::arguments().mid(1));
}
