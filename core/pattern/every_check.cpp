#include "core/pattern/every_check.h"

#include <iterator>
#include <utility>

namespace coutil {

std::vector<Problem> everyCheck(const Pattern& pattern) {
    std::vector<Problem> problems = checkPattern(pattern);
    for (auto* check : {&checkKinks, &checkReduction, &checkGirths, &checkSides, &checkChannels}) {
        std::vector<Problem> more = check(pattern);
        std::move(more.begin(), more.end(), std::back_inserter(problems));
    }
    return problems;
}

void addEveryCheck(const Pattern& pattern, std::vector<Problem>& problems) {
    std::erase_if(problems, [](const Problem& problem) {
        return problem.code == ProblemCode::reductionLarge;
    });
    std::vector<Problem> found = everyCheck(pattern);
    std::move(found.begin(), found.end(), std::back_inserter(problems));
}

}  // namespace coutil
