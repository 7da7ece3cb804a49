#pragma once

#include "core/block/level_table.h"
#include "core/block/style.h"
#include "core/measurements/body.h"

namespace coutil {

// Where the garment ends by default on a body, heights over the waist (top) or depths under it
// (bottom), mm. Proportions are common practice, no source; everything is relative to the body.
struct TopDefaults {
    double frontMm = 0;
    double bustMm = 0;
    double sideMm = 0;
    double backMm = 0;
};
struct BottomDefaults {
    double frontMm = 0;
    double sideMm = 0;
    double backMm = 0;
};

[[nodiscard]] TopDefaults topDefaults(const std::vector<LevelRow>& levels, const Body& body,
                                      TopShape shape);
[[nodiscard]] BottomDefaults bottomDefaults(const std::vector<LevelRow>& levels, const Body& body,
                                            BottomShape shape);

}  // namespace coutil
