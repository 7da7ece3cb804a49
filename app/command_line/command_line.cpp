#include "app/command_line/command_line.h"

#include <QtGlobal>
#include <algorithm>
#include <array>
#include <filesystem>
#include <system_error>

#include "app/command_line/command.h"
#include "app/command_line/messages.h"
#include "app/command_line/surroundings.h"

namespace coutil {
namespace {

const Command* commandNamed(const std::string& word) {
    const auto commands = allCommands();
    const auto found = std::ranges::find(
        commands, word, [](const Command& command) { return command.form.command; });
    return found == commands.end() ? nullptr : &*found;
}

bool isHelp(const std::string& word) { return word == "--help" || word == "-h"; }

// A file, or what can only be meant as one.
bool isMeantAsFile(const std::string& word) {
    const std::filesystem::path path(word);
    std::error_code unknown;
    return std::filesystem::exists(path, unknown) || path.has_extension() || path.has_parent_path();
}

ExitCode run(const Command& command, std::span<const std::string> words) {
    const Surroundings surroundings(command.needsLetters);
    const Outcome<Call> call = readCall(command.form, words);
    if (!call) return failedBy(call.problems);
    if (call->has("--help")) return giveResult(helpText(command), {});
    return command.run(*call);
}

ExitCode refuse(const std::string& word) {
    Problem problem;
    problem.code = word.starts_with("-") ? ProblemCode::optionUnknown : ProblemCode::callUnknown;
    problem.subject = word;
    return failedBy({problem});
}

}  // namespace

std::span<const Command> allCommands() {
    static const std::array commands{
        draftCommand(),   infoCommand(),    patternCommand(), fitCommand(),   alterCommand(),
        confirmCommand(), compareCommand(), checkCommand(),   traceCommand(), sheetsCommand()};
    return commands;
}

Wanted wantedBy(std::span<const std::string> words) {
    if (words.empty()) return Wanted::window;
    const std::string& first = words.front();
    if (commandNamed(first) != nullptr || isHelp(first) || first.starts_with("--"))
        return Wanted::command;
    return first.starts_with("-") || isMeantAsFile(first) ? Wanted::window : Wanted::command;
}

ExitCode runCommandLine(std::span<const std::string> words) {
    const std::string& first = words.front();
    if (const Command* command = commandNamed(first)) return run(*command, words.subspan(1));
    const Surroundings surroundings(false);
    if (isHelp(first)) return giveResult(helpText(), {});
    if (first == "--version") return giveResult("coutil " COUTIL_VERSION "\n", {});
    return refuse(first);
}

bool hasDisplay(std::span<const std::string> words) {
    const bool isChosen = qEnvironmentVariableIsSet("QT_QPA_PLATFORM") ||
                          std::ranges::find(words, "-platform") != words.end();
    if (isChosen || !qEnvironmentVariableIsEmpty("DISPLAY") ||
        !qEnvironmentVariableIsEmpty("WAYLAND_DISPLAY"))
        return true;
    Problem problem;
    problem.code = ProblemCode::displayMissing;
    sayProblems({problem});
    return false;
}

}  // namespace coutil
