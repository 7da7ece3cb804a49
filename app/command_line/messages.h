#pragma once

#include <QString>
#include <string>
#include <string_view>
#include <vector>

#include "app/command_line/exit_code.h"
#include "core/problems/problem.h"
#include "core/units/length.h"

namespace coutil {

// Text for a terminal: the narrow and unbreaking blanks of typeset text become plain ones, so that
// a search for "97 cm" finds it.
[[nodiscard]] std::string terminalText(QString text);

// The sentence of a problem as one line: what a maker's text brought along (line breaks, control
// characters) becomes blanks.
[[nodiscard]] std::string sentenceLine(const Problem& problem, LengthUnit unit);

// One line a problem on standard error: "coutil: [where: ]sentence". Equal lines are said once;
// notes are left to `check`.
void sayProblems(const std::vector<Problem>& problems, LengthUnit unit = LengthUnit::centimetre,
                 std::string_view where = {});

// The same for what made a call fail, with the exit code that belongs to it.
[[nodiscard]] ExitCode failedBy(const std::vector<Problem>& problems,
                                LengthUnit unit = LengthUnit::centimetre,
                                std::string_view where = {});

// Writes a result to the call's -o file as a whole, or to standard output ("-" or none).
[[nodiscard]] ExitCode giveResult(const std::string& bytes, const std::string& out);

}  // namespace coutil
