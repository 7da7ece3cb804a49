#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/pattern/pattern.h"

namespace coutil {

// Girths of both patterns at one height over the waist, with the lacing gap; absent where a panel
// does not reach that height.
struct GirthAt {
    double heightMm = 0;
    std::optional<double> aMm{};
    std::optional<double> bMm{};
};

// The body's girth at a level.
struct BodyGirth {
    std::string level{};
    double heightMm = 0;
    double girthMm = 0;
};

// Girth against height: where a garment is tight or loose. Heights are those that all panels of a
// or of b reach, every stepMm and at every level, from the lowest up. The lacing gap between two
// levels is interpolated, beyond them that of the nearest.
struct GirthChart {
    std::vector<GirthAt> girths{};
    std::vector<BodyGirth> body{};  // of b, and levels that only a has; from the lowest up
};

[[nodiscard]] GirthChart girthChart(const Pattern& a, const Pattern& b, double stepMm = 5);

// The same for left (a) and right (b) of one pattern, as girths of a garment with both halves so.
[[nodiscard]] GirthChart girthChartOfSides(const Pattern& pattern, double stepMm = 5);

}  // namespace coutil
