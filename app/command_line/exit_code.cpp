#include "app/command_line/exit_code.h"

#include <algorithm>

namespace coutil {
namespace {

bool isAboutAnUnreadableFile(const Problem& problem) {
    switch (problem.code) {
        case ProblemCode::fileMissing:
        case ProblemCode::fileUnreadable:
        case ProblemCode::fileForeign:
        case ProblemCode::fileDamaged:
        case ProblemCode::fileNewer:
        case ProblemCode::revisionTampered:
        case ProblemCode::revisionParentMissing:
            return true;
        default:
            return false;
    }
}

}  // namespace

ExitCode exitCodeFor(const std::vector<Problem>& problems) {
    return std::ranges::any_of(problems, isAboutAnUnreadableFile) ? ExitCode::badFile
                                                                  : ExitCode::badInput;
}

}  // namespace coutil
