#pragma once

#include <cstddef>
#include <vector>

namespace coutil {

// The shares after one of them was set to `value` (0..1): the others keep their proportions and
// take what is left, so that the sum stays 1. Where the others were all zero they share evenly.
[[nodiscard]] std::vector<double> sharesWithOneSet(const std::vector<double>& shares,
                                                   std::size_t index, double value);

}  // namespace coutil
