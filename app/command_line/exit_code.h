#pragma once

#include <vector>

#include "core/problems/problem.h"

namespace coutil {

// What the program gives back to the shell.
enum class ExitCode {
    done = 0,
    problemsFound = 1,  // done, and `check` found problems
    badInput = 2,       // the input or the call is wrong; nothing was written
    badFile = 3,        // a file can't be read or is damaged; nothing was changed
};

// badFile when one of them says that a file can't be read, else badInput.
[[nodiscard]] ExitCode exitCodeFor(const std::vector<Problem>& problems);

}  // namespace coutil
