#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

namespace coutil {

// A cutting plan in whole numbers: every size is a piece with its cut, every room a bar and one cut
// more (the last piece may end at the bar's end). What the parts of the search hand each other.
struct CuttingTask {
    std::vector<std::int64_t> sizes;  // all different, longest first, above 0
    std::vector<int> wanted;          // of each size
    std::vector<std::int64_t> rooms;  // of each stock, shortest first, all different
    std::vector<std::int64_t> costs;  // of each stock: kCostPerUnit for each unit of length, and 1
    std::int64_t commonLength = 1;    // the greatest length that divides every stock's
};
// One unit of stock outweighs any number of bars: first the least stock, then the fewest bars.
inline constexpr std::int64_t kCostPerUnit = 8192;

// What is cut from one bar: how many of each size, and from which stock.
struct BarPattern {
    std::vector<int> counts;
    std::size_t stock = 0;

    auto operator<=>(const BarPattern&) const = default;  // NOLINT(modernize-use-nullptr)
};

struct BarPlan {
    std::vector<BarPattern> bars;
    std::int64_t cost = 0;
};

// What is left of the work allowed.
struct StepsLeft {
    std::int64_t steps = 0;
    [[nodiscard]] bool isSpent() const { return steps <= 0; }
    void spend(std::int64_t count) { steps -= count; }
};

}  // namespace coutil
