#pragma once

#include "core/block/style.h"
#include "core/pattern/pattern.h"

namespace coutil {

// Allowance of one edge of a panel by the style's rules, mm: a fold has 0; else what the style says
// for "panel/edge"; else by role: seams seamMm, openings openingMm, top and bottom 0 where bound
// and edgeMm where not.
[[nodiscard]] double allowanceMm(const AllowanceStyle& style, const Panel& panel, const Edge& edge);

}  // namespace coutil
