#pragma once

#include <string>

#include "ui/comparing/compared_states.h"

namespace coutil {

// Both patterns as one SVG in true millimetres (writeComparisonSvg), each line with the ink, dash
// and name that it has on the table. For window and command line.
[[nodiscard]] std::string comparedSvg(const ComparedStates& states);

}  // namespace coutil
