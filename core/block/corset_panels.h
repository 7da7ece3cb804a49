#pragma once

#include <array>
#include <cstddef>
#include <vector>

#include "core/block/corset_frame.h"
#include "core/block/draft_corset.h"

namespace coutil {

// The edges of a corset panel in the order of its outline.
enum class PanelEdge : std::size_t { bottom, back, top, front };

// The panels of one half with their edges and grain, trimmed at the given seam positions. Needs
// heights and widths that passed their checks.
[[nodiscard]] std::vector<Panel> corsetPanels(const CorsetFrame& frame,
                                              const ResolvedHeights& heights, const Style& style);

// The grain line of a panel: upright through the middle of its waist, at most over the middle three
// fifths, and only as far as it stays clear of both long edges. Lower end first.
[[nodiscard]] std::array<Point, 2> grainLine(const CorsetFrame& frame,
                                             const ResolvedHeights& heights, std::size_t panel);

// One panelTooNarrow (subject = the nearest level) for every panel whose long edges come nearer
// than tolerance::kNarrowestPanelMm, or cross, between its ends.
[[nodiscard]] std::vector<Problem> checkPanelWidths(const CorsetFrame& frame,
                                                    const ResolvedHeights& heights);

}  // namespace coutil
