#pragma once

#include "core/comparison/comparison.h"

namespace coutil {

// The outline of panel b, laid on a and with its difference from a multiplied by `factor`, for the
// eye: closed, counter-clockwise, in the frame of a. Places of the two belong together that are at
// the same share of their edge above or below the waist mark, so factor 1 is b itself within
// 0.02 mm, as chords of 2 mm and less. Empty where the panels do not have the same edges.
[[nodiscard]] Path exaggeratedOutline(const Panel& a, const Panel& b, const Vector& shiftOfB,
                                      double factor);

// The same for a pair of a comparison of a and b; empty where the panel is not in both.
[[nodiscard]] Path exaggeratedOutline(const Pattern& a, const Pattern& b,
                                      const PanelComparison& pair, double factor);

}  // namespace coutil
