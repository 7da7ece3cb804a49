#pragma once

#include <functional>
#include <limits>

#include "core/geometry/path.h"

namespace coutil {

// A value at a height, and how fast it changes with the height.
struct HeightValue {
    double valueMm = 0;
    double perMm = 0;
};

// Moves what lies at one height up or down and sideways, all points of a height alike: widths at
// levels stay. Nothing moves outside `lowestMm`..`highestMm`.
struct HeightWarp {
    std::function<HeightValue(double)> height;    // where a height goes; grows with the height
    std::function<HeightValue(double)> sideways;  // may be empty: nothing moves sideways
    double lowestMm = -std::numeric_limits<double>::infinity();
    double highestMm = std::numeric_limits<double>::infinity();
};

// The path with every point moved. Pieces the warp reaches are cut to parts no longer than
// kLongestWarpedMm with exact end points and end tangents, so they leave the true line by less than
// 0.005 mm (tested) and join as smoothly as before; all others stay bit for bit.
[[nodiscard]] Path warped(const Path& path, const HeightWarp& warp);
inline constexpr double kLongestWarpedMm = 15;

// From 0 at share 0 to 1 at share 1, level and without curvature at both ends; 0 and 1 beyond.
[[nodiscard]] HeightValue smoothRise(double share);
// The steepest that smoothRise() gets, per share.
inline constexpr double kSteepestRise = 1.875;

// The way back through a growing map of heights: the height that `there` brings to `heightMm`, to
// 1e-12 mm; it lies between low and high.
[[nodiscard]] HeightValue wayBack(const std::function<HeightValue(double)>& there, double heightMm,
                                  double lowMm, double highMm);

}  // namespace coutil
