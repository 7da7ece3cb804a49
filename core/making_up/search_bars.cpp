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

    // Looks for a cheaper plan with few departures from the bars that seem best, then with more and
    // more, until nothing was left out or the steps are spent. (A wrong bar at the beginning would
    // otherwise cost all the time at the end.)
    void run() {
        for (int departures = 0;; departures = 2 * departures + 1) {
            isAllDeparted_ = true;
            reached_.clear();
            continueWith(task_.wanted, 0, departures);
            if (isAllDeparted_ || left_.isSpent()) return;
        }
    }

    [[nodiscard]] bool isComplete() const {
        return isAllDeparted_ && isAllListed_ && !left_.isSpent();
    }
    [[nodiscard]] const BarPlan& best() const { return best_; }

  private:
    const CuttingTask& task_;
    StepsLeft& left_;
    PatternPrices bySize_;
    BarPlan best_;
    std::vector<BarPattern> bars_;
    struct Reached {
        std::int64_t cost = 0;
        int departures = 0;
    };
    std::map<std::vector<int>, Reached> reached_;  // by what was left
    bool isAllDeparted_ = true;                    // in this round
    bool isAllListed_ = true;                      // no bar had too many patterns

    // Looks through the plans that begin with the bars so far and are cheaper than the best one.
    void continueWith(const std::vector<int>& wanted, std::int64_t cost, int departures) {
        if (isNothing(wanted)) {
            if (cost < best_.cost) best_ = {bars_, cost};
            return;
        }
        if (wasReached(wanted, {cost, departures})) return;
        const auto prices = pricesFor(task_, wanted, left_);
        if (!prices || isHopeless(wanted, cost, *prices)) return;
        for (BarPattern& pattern : patternsByWorth(wanted, *prices)) {
            const std::int64_t costWith = cost + task_.costs[pattern.stock];
            const std::vector<int> rest = less(wanted, pattern);
            if (isHopeless(rest, costWith, *prices)) continue;
            if (left_.isSpent()) return;
            if (departures < 0) {
                isAllDeparted_ = false;
                return;
            }
            bars_.push_back(std::move(pattern));
            continueWith(rest, costWith, departures);
            bars_.pop_back();
            --departures;
        }
    }

    bool wasReached(const std::vector<int>& wanted, const Reached& now) {
        const auto [known, isNew] = reached_.try_emplace(wanted, now);
        if (isNew) return false;
        if (known->second.cost <= now.cost && known->second.departures >= now.departures)
            return true;
        known->second = now;
        return false;
    }

    bool isHopeless(const std::vector<int>& wanted, std::int64_t cost,
                    const PatternPrices& prices) {
        return cost + leastCost(task_, wanted, prices, bySize_, left_) >= best_.cost;
    }

    std::vector<BarPattern> patternsByWorth(const std::vector<int>& wanted,
                                            const PatternPrices& prices) {
        FullPatterns full = fullPatterns(task_, wanted, kMostPatterns);
        isAllListed_ = isAllListed_ && full.isComplete;
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
    found.leastCost = leastCost(task, task.wanted, bySize, bySize, left);
    if (found.leastCost == found.plan.cost) return found;
    const auto prices = pricesFor(task, task.wanted, left);
    if (!prices) return found;
    found.leastCost = leastCost(task, task.wanted, *prices, bySize, left);
    if (found.leastCost == found.plan.cost) return found;
    BarSearch search(task, found.plan, left);
    search.run();
    found.plan = search.best();
    if (search.isComplete()) found.leastCost = found.plan.cost;
    return found;
}

}  // namespace coutil
