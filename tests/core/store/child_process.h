#pragma once

#include <chrono>
#include <csignal>
#include <functional>

#include <sys/types.h>
#include <sys/wait.h>
#include <unistd.h>

namespace coutil::test {

// Runs `work` in a child of its own and returns its exit code (0 to 125), or 128 + the signal that
// ended it. The child never comes back into the test framework.
inline int inChild(const std::function<int()>& work) {
    const pid_t child = ::fork();
    if (child == 0) ::_exit(work());
    int status = 0;
    ::waitpid(child, &status, 0);
    return WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
}

// The same without root's power over rights: tests of permissions mean nothing for root.
inline int asOrdinaryUser(const std::function<int()>& work) {
    constexpr uid_t kNobody = 65534;
    return inChild([&] {
        if (::geteuid() == 0 && (::setgid(kNobody) != 0 || ::setuid(kNobody) != 0)) return 125;
        return work();
    });
}

// How long `work` takes here, in microseconds: kill tests choose their moments by it.
inline unsigned long microsecondsOf(const std::function<void()>& work) {
    const auto start = std::chrono::steady_clock::now();
    work();
    const std::chrono::duration<double, std::micro> taken =
        std::chrono::steady_clock::now() - start;
    return static_cast<unsigned long>(taken.count()) + 1;
}

// A child does `work` over and over; once it has done it the first time, it is killed with SIGKILL
// after `microseconds`.
inline void killedAfter(unsigned long microseconds, const std::function<void()>& work) {
    int ready[2];
    if (::pipe(ready) != 0) return;
    const pid_t child = ::fork();
    if (child == 0) {
        work();
        if (::write(ready[1], "r", 1) != 1) ::_exit(1);
        for (;;) work();
    }
    char once = 0;
    if (::read(ready[0], &once, 1) == 1) ::usleep(static_cast<useconds_t>(microseconds));
    ::kill(child, SIGKILL);
    int status = 0;
    ::waitpid(child, &status, 0);
    ::close(ready[0]);
    ::close(ready[1]);
}

}  // namespace coutil::test
