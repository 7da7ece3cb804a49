#pragma once

#include <optional>
#include <string>
#include <vector>

#include "ui/comparing/compared_states.h"

namespace coutil {

// A pair of panels where it lies on table and paper, laid on each other at waist mark and grain.
struct PairOnTable {
    Path a;  // closed outlines, in mm, y up; empty where the panel is not in both
    Path b;  // with its difference multiplied
    Vector shift = Vector::Zero();  // from the frame of a's panel (b's, where only b has it)
    bool isMultiplied = false;
};

// All pairs of a comparison beside each other, front to back, the right side in a row of its own
// under the left. The waist of the first row lies at y = 0.
struct ComparedLayout {
    std::vector<PairOnTable> pairs;     // as in the comparison
    std::vector<double> waistHeightMm;  // of each row
    Box box;
};

// `factor` multiplies the difference of b from a, for the eye; 1 is b itself. A panel that is split
// or joined is drawn as it is.
[[nodiscard]] ComparedLayout comparedLayout(const ComparedStates& states, double factor);

inline constexpr double kSpaceBetweenPairsMm = 34;

// Whether any panel has a line of the level.
[[nodiscard]] bool reachesLevel(const Pattern& pattern, const std::string& level);

// The panel of a pair whose edges are shown: that of a, of b where only b has it.
[[nodiscard]] const Panel& panelShown(const ComparedStates& states, const PanelComparison& pair);

}  // namespace coutil
