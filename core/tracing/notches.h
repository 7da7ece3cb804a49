#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/tracing/tracing.h"

namespace coutil {

// The seam position of the balance notch for a seam whose edges reach this far from the waist on
// both panels: 40 mm above the waist where there is room, else nearer, else below; never where an
// edge turned upside down would show its two notches at nearly the same places (see
// kLeastUpsideDownMm). Nothing for a seam too short to tell.
[[nodiscard]] std::optional<double> balancePositionMm(const SeamLengths& front,
                                                      const SeamLengths& back);
inline constexpr double kLeastUpsideDownMm = 8;

// The notches of one panel of a pattern, edge by edge, for a cutting line that closes through
// `cutting`.
[[nodiscard]] std::vector<Notch> notchesOf(const Pattern& pattern, std::size_t panel,
                                           const std::vector<Point>& cutting);

}  // namespace coutil
