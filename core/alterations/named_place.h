#pragma once

#include <string>

#include "core/alterations/alteration.h"

namespace coutil {

// What an alteration names, as the detail of its problems tells it: its seam, panel or level, or
// the key of its line. Empty for those that concern the whole pattern or the block.
[[nodiscard]] std::string placeNamedBy(const Change& change);

}  // namespace coutil
