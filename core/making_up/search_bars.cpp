#include "core/making_up/search_bars.h"

#include <algorithm>
#include <map>

#include "core/making_up/fill_bars.h"
#include "core/making_up/pattern_prices.h"

namespace coutil {
namespace {

// More full patterns than this for one bar are not looked through; the plan is then not proved.
constexpr std::size_t kMostPatterns = 20'000;

std::vector<int> less(const std::vector<int>& wanted, const BarPattern& pattern) {
    std::vector<int> rest(wanted);
    for (std::size_t i = 0; i < rest.size(); ++i) rest[i] -= pattern.counts[i];
    return rest;
}

bool isNothing(const std::vector<int>& wanted) {
    return std::ranges::all_of(wanted, [](int count) { return count == 0; });
}

class BarSearch {
  public:
    BarSearch(const CuttingTask& task, BarPlan first, StepsLeft& left)
        : task_(task), left_(left), bySize_(pricesBySize(task)), best_(std::move(first)) {}

    // Looks through all plans that begin with the bars so far and are cheaper than the best one.
    void continueWith(const std::vector<int>& wanted, std::int64_t cost) {
        if (isNothing(wanted)) {
            if (cost < best_.cost) best_ = {bars_, cost};
            return;
        }
        if (wasReached(wanted, cost)) return;
        const auto prices = pricesFor(task_, wanted, left_);
        if (!prices) {
            isComplete_ = false;
            return;
        }
        if (isHopeless(wanted, cost, *prices)) return;
        for (BarPattern& pattern : patternsByWorth(wanted, *prices)) {
            const std::int64_t costWith = cost + task_.costs[pattern.stock];
            const std::vector<int> rest = less(wanted, pattern);
            if (isHopeless(rest, costWith, *prices)) continue;
            if (left_.isSpent()) isComplete_ = false;
            if (!isComplete_ && left_.isSpent()) return;
            bars_.push_back(std::move(pattern));
            continueWith(rest, costWith);
            bars_.pop_back();
        }
    }

    [[nodiscard]] bool isComplete() const { return isComplete_; }
    [[nodiscard]] const BarPlan& best() const { return best_; }

  private:
    const CuttingTask& task_;
    StepsLeft& left_;
    PatternPrices bySize_;
    BarPlan best_;
    std::vector<BarPattern> bars_;
    std::map<std::vector<int>, std::int64_t> reached_;  // what was left, at what least cost so far
    bool isComplete_ = true;

    bool wasReached(const std::vector<int>& wanted, std::int64_t cost) {
        const auto [known, isNew] = reached_.try_emplace(wanted, cost);
        if (!isNew && known->second <= cost) return true;
        known->second = cost;
        return false;
    }

    [[nodiscard]] bool isHopeless(const std::vector<int>& wanted, std::int64_t cost,
                                  const PatternPrices& prices) const {
        return cost + leastCost(task_, wanted, prices, bySize_) >= best_.cost;
    }

    std::vector<BarPattern> patternsByWorth(const std::vector<int>& wanted,
                                            const PatternPrices& prices) {
        FullPatterns full = fullPatterns(task_, wanted, kMostPatterns);
        isComplete_ = isComplete_ && full.isComplete;
        left_.spend(static_cast<std::int64_t>(full.patterns.size() * task_.sizes.size()));
        std::vector<std::pair<double, BarPattern>> rated;
        rated.reserve(full.patterns.size());
        for (BarPattern& pattern : full.patterns) {
            std::int64_t worth = 0;
            for (std::size_t i = 0; i < task_.sizes.size(); ++i)
                worth += pattern.counts[i] * prices.values[i];
            rated.emplace_back(
                static_cast<double>(worth) / static_cast<double>(task_.costs[pattern.stock]),
                std::move(pattern));
        }
        std::ranges::stable_sort(rated, std::ranges::greater{},
                                 &std::pair<double, BarPattern>::first);
        std::vector<BarPattern> patterns;
        patterns.reserve(rated.size());
        for (auto& [worth, pattern] : rated) patterns.push_back(std::move(pattern));
        return patterns;
    }
};

}  // namespace

FoundPlan searchBars(const CuttingTask& task, StepsLeft& left) {
    FoundPlan found{bestFitPlan(task), 0};
    const PatternPrices bySize = pricesBySize(task);
    found.leastCost = leastCost(task, task.wanted, bySize, bySize);
    if (found.leastCost == found.plan.cost) return found;
    const auto prices = pricesFor(task, task.wanted, left);
    if (!prices) return found;
    found.leastCost = leastCost(task, task.wanted, *prices, bySize);
    if (found.leastCost == found.plan.cost) return found;
    BarSearch search(task, found.plan, left);
    search.continueWith(task.wanted, 0);
    found.plan = search.best();
    if (search.isComplete()) found.leastCost = found.plan.cost;
    return found;
}

}  // namespace coutil
