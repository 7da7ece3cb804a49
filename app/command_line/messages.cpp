#include "app/command_line/messages.h"

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <system_error>

#include "core/store/export_file.h"
#include "ui/words/problem_sentence.h"

namespace coutil {
namespace {

bool isControl(unsigned char byte) { return byte < 0x20 || byte == 0x7F; }

std::string asOneLine(std::string text) {
    std::ranges::replace_if(text, isControl, ' ');
    return text;
}

std::optional<Problem> printToStandardOutput(const std::string& bytes) {
    const bool isWritten = std::fwrite(bytes.data(), 1, bytes.size(), stdout) == bytes.size() &&
                           std::fflush(stdout) == 0;
    if (isWritten) return std::nullopt;
    Problem problem;
    problem.code = errno == ENOSPC ? ProblemCode::diskFull : ProblemCode::fileUnwritable;
    problem.subject = "standard output";
    problem.detail = std::generic_category().message(errno);
    return problem;
}

}  // namespace

std::string terminalText(QString text) {
    text.replace(QChar(QChar::Nbsp), QLatin1Char(' '));
    text.replace(QChar(0x202F), QLatin1Char(' '));  // narrow unbreaking blank
    return text.toStdString();
}

std::string sentenceLine(const Problem& problem, LengthUnit unit) {
    return asOneLine(terminalText(problemSentence(problem, unit)));
}

void sayProblems(const std::vector<Problem>& problems, LengthUnit unit, std::string_view where) {
    const std::string start =
        where.empty() ? "coutil: " : "coutil: " + asOneLine(std::string(where)) + ": ";
    std::vector<std::string> said;
    for (const Problem& problem : problems) {
        if (problem.severity == Severity::note) continue;
        std::string line = start + sentenceLine(problem, unit) + "\n";
        if (std::ranges::find(said, line) != said.end()) continue;
        std::fputs(line.c_str(), stderr);
        said.push_back(std::move(line));
    }
}

ExitCode failedBy(const std::vector<Problem>& problems, LengthUnit unit, std::string_view where) {
    sayProblems(problems, unit, where);
    return exitCodeFor(problems);
}

ExitCode giveResult(const std::string& bytes, const std::string& out) {
    const auto problem =
        out.empty() || out == "-" ? printToStandardOutput(bytes) : writeExport(out, bytes);
    return problem ? failedBy({*problem}) : ExitCode::done;
}

}  // namespace coutil
