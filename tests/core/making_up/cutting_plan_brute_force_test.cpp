// Cutting plans against every possible plan, on small random tasks.
#include <algorithm>
#include <limits>
#include <random>
#include <utility>

#include "tests/core/making_up/plan_check.h"

namespace coutil {
namespace {

// Length of stock and number of bars: what a plan is judged by, in this order.
using Bill = std::pair<long, long>;
constexpr Bill kNoBill{std::numeric_limits<long>::max() / 2, 0};

Bill barFor(unsigned set, const std::vector<long>& pieces, const std::vector<long>& stocks,
            long loss) {
    long needed = -loss;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        if ((set >> i & 1U) != 0) needed += pieces[i] + loss;
    }
    for (const long stock : stocks) {
        if (needed <= stock) return {stock, 1};
    }
    return kNoBill;
}

// The best of all ways to part the pieces into bars, every set of pieces tried as one bar.
Bill bestOfAll(const std::vector<long>& pieces, const std::vector<long>& stocks, long loss) {
    const unsigned sets = 1U << pieces.size();
    std::vector<Bill> oneBar(sets, kNoBill);
    for (unsigned set = 1; set < sets; ++set) oneBar[set] = barFor(set, pieces, stocks, loss);
    std::vector<Bill> best(sets, kNoBill);
    best[0] = {0, 0};
    for (unsigned set = 1; set < sets; ++set) {
        for (unsigned bar = set; bar > 0; bar = (bar - 1) & set) {
            const Bill& rest = best[set & ~bar];
            best[set] = std::min(
                best[set], {rest.first + oneBar[bar].first, rest.second + oneBar[bar].second});
        }
    }
    return best[sets - 1];
}

struct RandomTask {
    std::vector<long> pieces;
    std::vector<long> stocks;
    long loss = 0;
};

RandomTask randomTask(std::mt19937& random) {
    const auto from = [&random](unsigned lowest, unsigned highest) {
        return static_cast<long>(lowest + random() % (highest - lowest + 1));
    };
    RandomTask task;
    const long stocks = from(1, 3);
    for (long k = 0; k < stocks; ++k) task.stocks.push_back(from(40, 150));
    std::ranges::sort(task.stocks);
    const long count = from(1, 9);
    const auto longest = static_cast<unsigned>(task.stocks.back());
    for (long k = 0; k < count; ++k) task.pieces.push_back(from(8, longest));
    if (random() % 3 == 0) {
        for (long& piece : task.pieces) piece = std::min(piece, longest / 2 + piece % 3);
    }
    task.loss = from(0, 4);
    return task;
}

TEST(CuttingPlanBruteForce, isTheBestOfAllPlans) {
    std::mt19937 random(20261125);
    int withSeveralStocks = 0;
    for (int k = 0; k < 1500; ++k) {
        SCOPED_TRACE("task " + std::to_string(k));
        const RandomTask task = randomTask(random);
        std::vector<PieceToCut> pieces;
        for (const long piece : task.pieces) pieces.push_back({static_cast<double>(piece), 1});
        const std::vector<double> stocksMm(task.stocks.begin(), task.stocks.end());
        const auto plan = cuttingPlan(pieces, stocksMm, static_cast<double>(task.loss));
        ASSERT_TRUE(plan.hasValue());
        plan_check::expectSound(*plan, pieces, static_cast<double>(task.loss));
        const Bill best = bestOfAll(task.pieces, task.stocks, task.loss);
        EXPECT_TRUE(plan->isProvedBest);
        EXPECT_EQ(plan->stockMm, static_cast<double>(best.first));
        EXPECT_EQ(plan->leastStockMm, plan->stockMm);
        EXPECT_EQ(plan_check::barCount(*plan), best.second);
        withSeveralStocks += task.stocks.size() > 1;
    }
    EXPECT_GT(withSeveralStocks, 500);
}

// The bound alone, the search cut off at once: never above the best plan.
TEST(CuttingPlanBruteForce, theBoundIsNeverTooHigh) {
    std::mt19937 random(7);
    int unproved = 0;
    for (int k = 0; k < 600; ++k) {
        SCOPED_TRACE("task " + std::to_string(k));
        const RandomTask task = randomTask(random);
        std::vector<PieceToCut> pieces;
        for (const long piece : task.pieces) pieces.push_back({static_cast<double>(piece), 1});
        const std::vector<double> stocksMm(task.stocks.begin(), task.stocks.end());
        const auto plan = cuttingPlan(pieces, stocksMm, static_cast<double>(task.loss), {150});
        ASSERT_TRUE(plan.hasValue());
        plan_check::expectSound(*plan, pieces, static_cast<double>(task.loss));
        const Bill best = bestOfAll(task.pieces, task.stocks, task.loss);
        EXPECT_LE(plan->leastStockMm, static_cast<double>(best.first));
        EXPECT_GE(plan->stockMm, static_cast<double>(best.first));
        if (plan->isProvedBest) {
            EXPECT_EQ(plan->stockMm, static_cast<double>(best.first));
        }
        unproved += !plan->isProvedBest;
    }
    EXPECT_GT(unproved, 0);
}

}  // namespace
}  // namespace coutil
