#include "core/making_up/fill_bars.h"

#include <algorithm>

namespace coutil {
namespace {

struct OpenBar {
    std::vector<int> counts;
    std::int64_t rest = 0;
    std::int64_t filled = 0;
};

std::size_t shortestStockFor(const CuttingTask& task, std::int64_t filled) {
    const auto found = std::ranges::lower_bound(task.rooms, filled);
    return static_cast<std::size_t>(found - task.rooms.begin());
}

void putIn(const CuttingTask& task, std::size_t size, std::int64_t usualRoom,
           std::vector<OpenBar>& bars) {
    OpenBar* tightest = nullptr;
    for (OpenBar& bar : bars) {
        if (bar.rest < task.sizes[size]) continue;
        if (tightest == nullptr || bar.rest < tightest->rest) tightest = &bar;
    }
    if (tightest == nullptr) {
        const std::int64_t room =
            std::max(usualRoom, task.rooms[shortestStockFor(task, task.sizes[size])]);
        bars.push_back({std::vector<int>(task.sizes.size(), 0), room, 0});
        tightest = &bars.back();
    }
    ++tightest->counts[size];
    tightest->rest -= task.sizes[size];
    tightest->filled += task.sizes[size];
}

BarPlan bestFitWith(const CuttingTask& task, std::int64_t usualRoom) {
    std::vector<OpenBar> bars;
    for (std::size_t size = 0; size < task.sizes.size(); ++size) {
        for (int k = 0; k < task.wanted[size]; ++k) putIn(task, size, usualRoom, bars);
    }
    BarPlan plan;
    for (OpenBar& bar : bars) {
        const std::size_t stock = shortestStockFor(task, bar.filled);
        plan.cost += task.costs[stock];
        plan.bars.push_back({std::move(bar.counts), stock});
    }
    return plan;
}

// Lists the patterns of one stock, taking as many of each size as possible first.
class PatternList {
  public:
    PatternList(const CuttingTask& task, const std::vector<int>& wanted, std::size_t most,
                FullPatterns& found)
        : task_(task), wanted_(wanted), most_(most), found_(found) {}

    void list(std::size_t stock) {
        pattern_ = {std::vector<int>(task_.sizes.size(), 0), stock};
        const auto longest = std::ranges::find_if(wanted_, [](int count) { return count > 0; });
        if (longest == wanted_.end()) return;
        // Bars that the next shorter stock would take are its own.
        atLeast_ = stock == 0 ? 0 : task_.rooms[stock - 1] + 1;
        take(static_cast<std::size_t>(longest - wanted_.begin()), 1, task_.rooms[stock]);
    }

  private:
    const CuttingTask& task_;
    const std::vector<int>& wanted_;
    std::size_t most_;
    FullPatterns& found_;
    BarPattern pattern_;
    std::int64_t atLeast_ = 0;

    void take(std::size_t size, std::int64_t least, std::int64_t rest) {
        while (size < task_.sizes.size() && least == 0 &&
               (wanted_[size] == 0 || task_.sizes[size] > rest))
            ++size;
        if (size == task_.sizes.size()) return keep(rest);
        const auto most = std::min<std::int64_t>(wanted_[size], rest / task_.sizes[size]);
        for (auto count = most; count >= least && found_.isComplete; --count) {
            pattern_.counts[size] = static_cast<int>(count);
            take(size + 1, 0, rest - count * task_.sizes[size]);
        }
        pattern_.counts[size] = 0;
    }

    void keep(std::int64_t rest) {
        if (task_.rooms[pattern_.stock] - rest < atLeast_ || takesMore(rest)) return;
        found_.isComplete = found_.patterns.size() < most_;
        if (found_.isComplete) found_.patterns.push_back(pattern_);
    }

    [[nodiscard]] bool takesMore(std::int64_t rest) const {
        for (std::size_t size = task_.sizes.size(); size-- > 0;) {
            if (task_.sizes[size] > rest) return false;
            if (wanted_[size] > pattern_.counts[size]) return true;
        }
        return false;
    }
};

}  // namespace

BarPlan bestFitPlan(const CuttingTask& task) {
    BarPlan best;
    for (const std::int64_t room : task.rooms) {
        BarPlan plan = bestFitWith(task, room);
        if (best.bars.empty() || plan.cost < best.cost) best = std::move(plan);
    }
    return best;
}

FullPatterns fullPatterns(const CuttingTask& task, const std::vector<int>& wanted,
                          std::size_t most) {
    FullPatterns found;
    PatternList patterns(task, wanted, most, found);
    for (std::size_t stock = 0; stock < task.rooms.size(); ++stock) patterns.list(stock);
    return found;
}

}  // namespace coutil
