#pragma once

#include <string>
#include <vector>

#include "core/problems/problem.h"

namespace coutil {

// Adds makingUpOutOfRange for a choice outside its limits or not a number. `key` is its path, like
// "eyelets/pitch".
void requireWithin(std::string key, double value, double lowest, double highest,
                   std::vector<Problem>& problems, FigureUnit unit = FigureUnit::millimetre);

}  // namespace coutil
