#pragma once

#include <array>
#include <functional>

#include "core/pattern/pattern.h"

namespace coutil {

// An upright grain line at x from the waist down and up over three fifths of the way to
// `lowestMm` and `highestMm`, as far as it stays clear. `clearMm` tells how far the line is from
// the nearer long edge at a height. Lower end first.
[[nodiscard]] std::array<Point, 2> grainLineAt(double xMm, double lowestMm, double highestMm,
                                               const std::function<double(double)>& clearMm);

// Draws the grain of a panel again (through the middle of its waist) where an altered edge has come
// too near to it; else it stays where it is.
void keepGrainInside(Panel& panel);

}  // namespace coutil
