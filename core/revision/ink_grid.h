#pragma once

#include <cstdint>

#include "core/pattern/pattern.h"

namespace coutil {

// The ink grid as whole numbers: steps of tolerance::kInkGridMm (micrometres). The nearest step to
// a length; lengths beyond a kilometre count as one, so that no pattern can overflow.
[[nodiscard]] std::int64_t inkStepsOf(double mm);

// The length of so many steps. Exact in this sense: inkStepsOf(mmOfInkSteps(n)) == n.
[[nodiscard]] double mmOfInkSteps(std::int64_t steps);

inline constexpr std::int64_t kMostInkSteps = 1'000'000'000;

// Whether ink can hold the pattern: every number is finite and below a kilometre, and every path
// has a piece.
[[nodiscard]] bool isInkable(const Pattern& pattern);

}  // namespace coutil
