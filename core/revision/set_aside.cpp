#include "core/revision/set_aside.h"

#include <algorithm>
#include <utility>

namespace coutil {
namespace {

bool means(const SetAside& entry, const Problem& problem) {
    return entry.code == keyOf(problem.code) && entry.subject == problem.subject &&
           entry.panel == problem.panel;
}

}  // namespace

bool canBeSetAside(const Problem& problem) { return !isError(problem); }

SetAside setAsideOf(const Problem& problem, std::string reason) {
    return {std::string(keyOf(problem.code)), problem.subject, problem.panel, std::move(reason)};
}

PartedProblems partedBy(const std::vector<SetAside>& list, std::vector<Problem> problems) {
    PartedProblems parted;
    for (Problem& problem : problems) {
        const bool isAside =
            canBeSetAside(problem) &&
            std::ranges::any_of(list, [&](const SetAside& entry) { return means(entry, problem); });
        (isAside ? parted.setAside : parted.standing).push_back(std::move(problem));
    }
    return parted;
}

}  // namespace coutil
