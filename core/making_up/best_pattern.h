#pragma once

#include <optional>

#include "core/making_up/cutting_task.h"

namespace coutil {

// The most valuable way to fill one bar.
struct BestPattern {
    std::int64_t value = 0;
    std::vector<int> counts;
};

// The pattern of greatest value for a room, of at most `wanted` of each size: a bounded knapsack,
// solved exactly by depth first search in order of value per length. Values from 0 to 2^32, rooms
// below 2^28. Nothing when the steps ran out.
[[nodiscard]] std::optional<BestPattern> bestPattern(const CuttingTask& task,
                                                     const std::vector<int>& wanted,
                                                     const std::vector<std::int64_t>& values,
                                                     std::int64_t room, StepsLeft& left);

}  // namespace coutil
