#pragma once

#include <vector>

#include "core/tracing/tracing.h"

namespace coutil {

// Tracings made up for the tests of the sheets, so that these depend on no drafting rule.

// Panels of one half of a corset, 350 to 390 mm tall and 60 to 120 mm wide with allowances, curved
// seams, notches, levels, grain and label room; the first on the fold.
[[nodiscard]] std::vector<Tracing> madeUpCorset(int panels = 6);

// The pieces of a whole dress: 16 curved panels of 1.84 m2 in all, from pockets to sleeves and long
// concave bodies, as the page packing of our reference measurements used (with other outlines).
[[nodiscard]] std::vector<Tracing> madeUpDress();

// The dress with every piece stretched by its own random amounts, 0.7 to 1.3 each way, and all of
// it brought back to 1.84 m2.
[[nodiscard]] std::vector<Tracing> randomDress(unsigned seed);

}  // namespace coutil
