#pragma once

#include "core/making_up/cutting_task.h"

namespace coutil {

struct FoundPlan {
    BarPlan plan;
    std::int64_t leastCost = 0;  // no plan costs less
};

// The cheapest plan for a task, as far as the steps reach: the bars one after the other, each for
// the longest size still wanted, those first whose pieces are worth most by the prices of what is
// left. Proved best where plan.cost == leastCost.
[[nodiscard]] FoundPlan searchBars(const CuttingTask& task, StepsLeft& left);

}  // namespace coutil
