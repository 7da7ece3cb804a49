#pragma once

#include <optional>

#include "core/making_up/cutting_task.h"

namespace coutil {

// A price for each size, and for each stock the most that one bar of it can hold by these prices:
// checked exactly, so any plan whose bars hold all that is wanted keeps both.
struct PatternPrices {
    std::vector<std::int64_t> values;     // per size
    std::vector<std::int64_t> mostInBar;  // per stock
};

// Prices that prove much: those of the linear programme over all patterns of what is wanted, by
// column generation (Gilmore and Gomory 1961), as whole numbers. They hold for everything that
// wants no more of any size. Nothing when the steps ran out.
[[nodiscard]] std::optional<PatternPrices> pricesFor(const CuttingTask& task,
                                                     const std::vector<int>& wanted,
                                                     StepsLeft& left);

// Prices that are the sizes themselves: what no plan can undercut because of the material alone.
[[nodiscard]] PatternPrices pricesBySize(const CuttingTask& task);

// The least cost of bars that, by both price lists, can hold what is wanted; never above the cost
// of any plan. Whole numbers, rounded up to sums that bars of these stocks can have; where there
// are too many combinations of bars, to lengths that the stocks' common length divides.
[[nodiscard]] std::int64_t leastCost(const CuttingTask& task, const std::vector<int>& wanted,
                                     const PatternPrices& first, const PatternPrices& second,
                                     StepsLeft& left);

}  // namespace coutil
