#pragma once

#include <vector>

#include "core/alterations/settle.h"
#include "core/geometry/path.h"

namespace coutil {

// The path midway between two, place by place at equal shares of their lengths: exact in points and
// directions at joints at most 10 mm apart, by a cubic between them (its error there is not
// measured by a test yet). Both run the same way.
[[nodiscard]] Path meanPath(const Path& one, const Path& other);

// Finishes a pattern whose edges are means: edges cut to the lengths wanted, corners of lines laid
// on the ends of the long edges, angles at seams evened, levels and girths taken anew.
void settleMean(const Pattern& before, Pattern& mean, const std::vector<WantedLengths>& wanted);

}  // namespace coutil
