#include "tests/app/program_run.h"

#include <csignal>
#include <cstdlib>
#include <sstream>

#include <fcntl.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include "tests/core/store/file_state.h"
#include "tests/core/store/scratch_folder.h"

namespace coutil::test {
namespace {

constexpr uid_t kNobody = 65534;

void sendTo(int descriptor, const std::filesystem::path& file) {
    const int opened = ::open(file.c_str(), O_WRONLY | O_CREAT, 0666);
    if (opened < 0 || ::dup2(opened, descriptor) < 0) ::_exit(126);
    ::close(opened);
}

void arrange(const RunCircumstances& circumstances) {
    for (const char* name :
         {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM", "QT_SCALE_FACTOR", "XDG_RUNTIME_DIR"})
        ::unsetenv(name);
    if (!circumstances.locale.empty()) ::setenv("LC_ALL", circumstances.locale.c_str(), 1);
    if (!circumstances.language.empty()) ::setenv("LANGUAGE", circumstances.language.c_str(), 1);
    if (circumstances.largestFileBytes >= 0) {
        ::signal(SIGXFSZ, SIG_IGN);
        const auto bytes = static_cast<rlim_t>(circumstances.largestFileBytes);
        const rlimit limit{bytes, bytes};
        if (::setrlimit(RLIMIT_FSIZE, &limit) != 0) ::_exit(126);
    }
    const bool mustChange = circumstances.isOrdinaryUser && ::geteuid() == 0;
    if (mustChange && (::setgid(kNobody) != 0 || ::setuid(kNobody) != 0)) ::_exit(126);
}

[[noreturn]] void become(const std::vector<std::string>& words) {
    const char* program = std::getenv("COUTIL_PROGRAM");
    if (program == nullptr) ::_exit(126);
    std::vector<char*> arguments{const_cast<char*>(program)};
    for (const std::string& word : words) arguments.push_back(const_cast<char*>(word.c_str()));
    arguments.push_back(nullptr);
    ::execv(program, arguments.data());
    ::_exit(127);
}

}  // namespace

std::vector<std::string> ProgramRun::messages() const {
    std::vector<std::string> lines;
    std::istringstream in(err);
    for (std::string line; std::getline(in, line);) lines.push_back(line);
    return lines;
}

ProgramRun runProgram(const std::vector<std::string>& words,
                      const RunCircumstances& circumstances) {
    const ScratchFolder folder;
    const std::filesystem::path out =
        circumstances.out.empty() ? folder / "out" : circumstances.out;
    const pid_t child = ::fork();
    if (child == 0) {
        sendTo(STDOUT_FILENO, out);
        sendTo(STDERR_FILENO, folder / "err");
        arrange(circumstances);
        become(words);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    ProgramRun run;
    run.exitCode = WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
    if (circumstances.out.empty()) run.out = bytesIn(out);
    run.err = bytesIn(folder / "err");
    return run;
}

std::string demoFile(const std::string& name) {
    return std::string(COUTIL_SOURCE_DIR "/resources/demo/") + name;
}

}  // namespace coutil::test
