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
                       const PatternPrices& first, const PatternPrices& second) {
    CheapestBars bars(task, first, second);
    const std::int64_t worth1 = worthOf(wanted, first.values);
    const std::int64_t worth2 = worthOf(wanted, second.values);
    bars.startWithLongest(worth1, worth2);
    bars.choose(task.rooms.size() - 1, 0, worth1, worth2);
    return bars.best();
}

}  // namespace coutil
