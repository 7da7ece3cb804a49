#pragma once

#include <vector>

#include "core/pattern/pattern.h"

namespace coutil {

// Draws every level again on a panel, where the panel is crossed from long edge to long edge.
void drawLevels(const std::vector<Level>& levels, Panel& panel);

// The girth of every level measured on the panels (both sides and the lacing gap); absent where one
// is not crossed.
void measureGirths(const std::vector<Panel>& panels, std::vector<Level>& levels);

}  // namespace coutil
