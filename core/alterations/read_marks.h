#pragma once

#include <span>
#include <vector>

#include "core/alterations/alteration.h"
#include "core/alterations/mark.h"
#include "core/pattern/pattern.h"
#include "core/problems/problem.h"

namespace coutil {

// An alteration in the making. A tuck inside a panel moves one edge of a seam only and is kept
// apart from what was read on that seam itself.
struct Asked {
    Alteration alteration;
    bool isTuck = false;
};

// What the marks that are switched on ask for, in their order and without ids: readings of one
// place are one change. Adds a problem markUnfit for each mark that has no place in the pattern.
[[nodiscard]] std::vector<Asked> readMarks(std::span<const Mark> marks, const Pattern& pattern,
                                           std::vector<Problem>& problems);

}  // namespace coutil
