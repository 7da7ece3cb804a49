#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/alterations/alteration.h"
#include "core/alterations/amount_curve.h"
#include "core/alterations/line_in_panel.h"
#include "core/pattern/pattern.h"

namespace coutil {

// One panel's part of a top or bottom line, with the distances along the line from centre front at
// its two corners.
struct PanelOnLine {
    std::size_t panel = 0;
    LineInPanel place;
    double fromMm = 0;
    double toMm = 0;
};

// The top or bottom line of one half, front to back.
struct LineOfHalf {
    std::vector<PanelOnLine> panels;
};

// One line for each side concerned: one on a half, up to two on a whole pattern.
[[nodiscard]] std::vector<LineOfHalf> linesOfHalves(const Pattern& pattern, BodySide side,
                                                    EdgeLine line);

// How far along the line a place lies; nothing where its seam or panel is not there, or it lies
// beyond its panel.
[[nodiscard]] std::optional<double> positionOf(const Pattern& pattern, const LineOfHalf& half,
                                               const LinePlace& place);

// A panel's line from front to back with every place moved up by the curve's amount, along the
// upward directions of the seams at its ends, mixed by the share of its length.
[[nodiscard]] Path raisedLine(const Panel& panel, const PanelOnLine& each,
                              const AmountCurve& curve);

// The direction (rightwards, unit length) of a raised line at its front or back end: that of
// `raised`; at centre front and back square where the line was square before.
[[nodiscard]] Vector endDirection(const Pattern& before, const Pattern& pattern,
                                  const PanelOnLine& each, const Path& raised, bool isFrontEnd);

}  // namespace coutil
