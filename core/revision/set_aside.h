#pragma once

#include <vector>

#include "core/problems/problem.h"
#include "core/revision/folio.h"

namespace coutil {

// Problems parted by what the maker has looked at and let stand. Both parts keep their order.
struct PartedProblems {
    std::vector<Problem> standing;
    std::vector<Problem> setAside;
};

// A note or warning is set aside when an entry has its code, subject and panel. An error stands
// whatever the list says.
[[nodiscard]] PartedProblems partedBy(const std::vector<SetAside>& list,
                                      std::vector<Problem> problems);

// Whether a maker may set a problem aside.
[[nodiscard]] bool canBeSetAside(const Problem& problem);

// The entry that sets a problem aside.
[[nodiscard]] SetAside setAsideOf(const Problem& problem, std::string reason);

}  // namespace coutil
