#include "core/making_up/best_pattern.h"

#include <algorithm>

namespace coutil {
namespace {

struct Choice {
    std::int64_t size = 0;
    std::int64_t value = 0;
    int wanted = 0;
    std::size_t index = 0;  // in the task
};

std::vector<Choice> choicesOf(const CuttingTask& task, const std::vector<int>& wanted,
                              const std::vector<std::int64_t>& values) {
    std::vector<Choice> choices;
    for (std::size_t i = 0; i < task.sizes.size(); ++i) {
        if (wanted[i] > 0 && values[i] > 0)
            choices.push_back({task.sizes[i], values[i], wanted[i], i});
    }
    std::ranges::stable_sort(choices, [](const Choice& a, const Choice& b) {
        return a.value * b.size > b.value * a.size;
    });
    return choices;
}

class Knapsack {
  public:
    Knapsack(std::vector<Choice> choices, StepsLeft& left)
        : choices_(std::move(choices)),
          left_(left),
          taken_(choices_.size(), 0),
          best_(choices_.size(), 0) {}

    void fill(std::size_t at, std::int64_t room, std::int64_t value) {
        left_.spend(1);
        if (left_.isSpent()) return;
        if (value > bestValue_) {
            bestValue_ = value;
            best_ = taken_;
        }
        if (at == choices_.size()) return;
        const Choice& choice = choices_[at];
        // Whatever follows is worth at most the room at this choice's value per length.
        if (value + room * choice.value / choice.size <= bestValue_) return;
        const auto most = std::min<std::int64_t>(choice.wanted, room / choice.size);
        for (auto count = most; count >= 0; --count) {
            taken_[at] = static_cast<int>(count);
            fill(at + 1, room - count * choice.size, value + count * choice.value);
        }
        taken_[at] = 0;
    }

    [[nodiscard]] BestPattern best(std::size_t sizes) const {
        BestPattern pattern{bestValue_, std::vector<int>(sizes, 0)};
        for (std::size_t i = 0; i < choices_.size(); ++i) {
            pattern.counts[choices_[i].index] = best_[i];
        }
        return pattern;
    }

  private:
    std::vector<Choice> choices_;
    StepsLeft& left_;
    std::vector<int> taken_;
    std::vector<int> best_;
    std::int64_t bestValue_ = 0;
};

}  // namespace

std::optional<BestPattern> bestPattern(const CuttingTask& task, const std::vector<int>& wanted,
                                       const std::vector<std::int64_t>& values, std::int64_t room,
                                       StepsLeft& left) {
    Knapsack knapsack(choicesOf(task, wanted, values), left);
    knapsack.fill(0, room, 0);
    if (left.isSpent()) return std::nullopt;
    return knapsack.best(task.sizes.size());
}

}  // namespace coutil
