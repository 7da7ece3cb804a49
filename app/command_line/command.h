#pragma once

#include <span>
#include <string>
#include <string_view>

#include "app/command_line/call.h"
#include "app/command_line/exit_code.h"

namespace coutil {

// One word of the command line: its form, what help says of it, and what it does.
struct Command {
    CallForm form;
    const char* summary = "";  // English, marked for translation
    ExitCode (*run)(const Call& call) = nullptr;
    bool needsLetters = false;  // draws text, for which Qt wants its fonts
};

// All commands, in the order of the job.
[[nodiscard]] std::span<const Command> allCommands();

// Each command stands in a file of its own.
[[nodiscard]] Command draftCommand();
[[nodiscard]] Command infoCommand();
[[nodiscard]] Command patternCommand();
[[nodiscard]] Command fitCommand();
[[nodiscard]] Command alterCommand();
[[nodiscard]] Command confirmCommand();
[[nodiscard]] Command compareCommand();
[[nodiscard]] Command checkCommand();
[[nodiscard]] Command traceCommand();
[[nodiscard]] Command sheetsCommand();

// What "coutil --help" and "coutil COMMAND --help" print.
[[nodiscard]] std::string helpText();
[[nodiscard]] std::string helpText(const Command& command);

}  // namespace coutil
