#pragma once

#include <span>
#include <string>

#include "app/command_line/exit_code.h"

namespace coutil {

// What the words after the program's name ask for.
enum class Wanted { window, command };

// A word that is a command, --help, --version, or that makes no sense belongs to the command line;
// nothing, a file, or an option of Qt's own ("-platform") to the window.
[[nodiscard]] Wanted wantedBy(std::span<const std::string> words);

// Runs it: results on standard output, messages on standard error, a line each. Needs no display.
[[nodiscard]] ExitCode runCommandLine(std::span<const std::string> words);

// Whether a window can be shown; when not, says so in one line.
[[nodiscard]] bool hasDisplay(std::span<const std::string> words);

}  // namespace coutil
