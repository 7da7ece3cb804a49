#pragma once

#include "core/making_up/cutting_task.h"

namespace coutil {

// A good plan without search: for every stock as the one mostly used, longest pieces first, each
// into the fullest bar that still takes it; then every bar from the shortest stock that does. The
// cheapest of these plans.
[[nodiscard]] BarPlan bestFitPlan(const CuttingTask& task);

// All patterns of one bar that hold at least one of the longest size still wanted, that no further
// piece fits into, and that no shorter stock would take: some best plan has one of these.
struct FullPatterns {
    std::vector<BarPattern> patterns;
    bool isComplete = true;  // false when there were more than `most`
};
[[nodiscard]] FullPatterns fullPatterns(const CuttingTask& task, const std::vector<int>& wanted,
                                        std::size_t most);

}  // namespace coutil
