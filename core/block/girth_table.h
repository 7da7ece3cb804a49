#pragma once

#include <vector>

#include "core/block/corset_frame.h"
#include "core/pattern/pattern.h"

namespace coutil {

// Draws every level, also the maker's own, on each panel that it crosses from long edge to long
// edge, and gives the girth table, top to bottom, measured on the panels.
[[nodiscard]] std::vector<Level> drawnLevels(const CorsetFrame& frame, const Style& style,
                                             std::vector<Panel>& panels);

}  // namespace coutil
