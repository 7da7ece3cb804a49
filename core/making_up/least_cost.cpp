#include <algorithm>
#include <limits>

#include "core/making_up/pattern_prices.h"

namespace coutil {
namespace {

constexpr std::int64_t kNoCost = std::numeric_limits<std::int64_t>::max();

std::int64_t worthOf(const std::vector<int>& wanted, const std::vector<std::int64_t>& values) {
    std::int64_t sum = 0;
    for (std::size_t i = 0; i < wanted.size(); ++i) sum += wanted[i] * values[i];
    return sum;
}

std::int64_t barsFor(std::int64_t worth, std::int64_t mostInBar) {
    if (worth <= 0) return 0;
    return mostInBar <= 0 ? kNoCost : (worth + mostInBar - 1) / mostInBar;
}

// More combinations of bars than this are not tried.
constexpr double kMostCombinations = 3000;

// Cost per worth of the stock that is cheapest by a price list, times what is wanted.
double costByWorth(const CuttingTask& task, const PatternPrices& prices, std::int64_t worth) {
    double cheapest = static_cast<double>(kNoCost);
    for (std::size_t stock = 0; stock < task.rooms.size(); ++stock) {
        if (prices.mostInBar[stock] <= 0) continue;
        cheapest = std::min(cheapest, static_cast<double>(task.costs[stock]) /
                                          static_cast<double>(prices.mostInBar[stock]));
    }
    // Rounded down by more than three divisions and products of doubles can lose.
    return cheapest * static_cast<double>(std::max<std::int64_t>(worth, 0)) * (1 - 1e-14);
}

// The least cost from `cost` on that a length divided by the common one can have, in bars of at
// most the longest stock.
std::int64_t nextCost(const CuttingTask& task, std::int64_t cost) {
    const std::int64_t longest = task.costs.back() / kCostPerUnit;
    std::int64_t length = cost / kCostPerUnit / task.commonLength * task.commonLength;
    for (;; length += task.commonLength) {
        const std::int64_t mostBars = kCostPerUnit - 1;
        if (length * kCostPerUnit + mostBars < cost) continue;
        const std::int64_t bars = barsFor(length, longest);
        return std::max(cost, length * kCostPerUnit + bars);
    }
}

// Tries every number of bars of every stock, the longest first; of the shortest as many as it
// takes.
class CheapestBars {
  public:
    CheapestBars(const CuttingTask& task, const PatternPrices& first, const PatternPrices& second)
        : task_(task), first_(first), second_(second) {}

    void choose(std::size_t stock, std::int64_t cost, std::int64_t worth1, std::int64_t worth2) {
        const std::int64_t most = std::max(barsFor(worth1, first_.mostInBar[stock]),
                                           barsFor(worth2, second_.mostInBar[stock]));
        if (stock == 0) {
            if (most != kNoCost) best_ = std::min(best_, cost + most * task_.costs[0]);
            return;
        }
        for (std::int64_t bars = 0; bars <= most; ++bars) {
            const std::int64_t costSoFar = cost + bars * task_.costs[stock];
            if (costSoFar >= best_) return;
            choose(stock - 1, costSoFar, worth1 - bars * first_.mostInBar[stock],
                   worth2 - bars * second_.mostInBar[stock]);
        }
    }

    // Bars of the longest stock alone always do: every size fits there.
    void startWithLongest(std::int64_t worth1, std::int64_t worth2) {
        best_ = task_.costs.back() * std::max(barsFor(worth1, first_.mostInBar.back()),
                                              barsFor(worth2, second_.mostInBar.back()));
    }

    [[nodiscard]] std::int64_t best() const { return best_; }

  private:
    const CuttingTask& task_;
    const PatternPrices& first_;
    const PatternPrices& second_;
    std::int64_t best_ = kNoCost;
};

}  // namespace

PatternPrices pricesBySize(const CuttingTask& task) { return {task.sizes, task.rooms}; }

std::int64_t leastCost(const CuttingTask& task, const std::vector<int>& wanted,
                       const PatternPrices& first, const PatternPrices& second, StepsLeft& left) {
    const std::int64_t worth1 = worthOf(wanted, first.values);
    const std::int64_t worth2 = worthOf(wanted, second.values);
    double combinations = 1;
    for (std::size_t stock = 1; stock < task.rooms.size(); ++stock) {
        combinations *= 1 + static_cast<double>(std::max(barsFor(worth1, first.mostInBar[stock]),
                                                         barsFor(worth2, second.mostInBar[stock])));
    }
    if (combinations > kMostCombinations) {
        left.spend(static_cast<std::int64_t>(task.rooms.size()));
        const double cost =
            std::max(costByWorth(task, first, worth1), costByWorth(task, second, worth2));
        return nextCost(task, static_cast<std::int64_t>(cost));
    }
    left.spend(1 + static_cast<std::int64_t>(combinations));
    CheapestBars bars(task, first, second);
    bars.startWithLongest(worth1, worth2);
    bars.choose(task.rooms.size() - 1, 0, worth1, worth2);
    return bars.best();
}

}  // namespace coutil
