#pragma once

#include "core/making_up/channel.h"

namespace coutil {

// Whether a channel lies inside its panel: its whole width clear of both long edges (to 0.05 mm),
// of the edge it follows at one side.
[[nodiscard]] bool hasRoomFor(const Pattern& pattern, const Channel& channel);

}  // namespace coutil
