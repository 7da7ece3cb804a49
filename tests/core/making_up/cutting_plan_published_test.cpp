// Cutting plans against published tasks of which the best plan is known.
#include <numeric>

#include "tests/core/making_up/plan_check.h"

namespace coutil {
namespace {

// The paper machine with rolls of 5600 mm: the worked example of the encyclopaedia article "Cutting
// stock problem" (data read; 407160 mm in all, so 72.7 rolls or more, read; that 73 are enough with
// 0.401 % waste: from memory).
TEST(CuttingPlanPublished, paperRollsOf5600) {
    const std::vector<PieceToCut> orders{{1380, 22}, {1520, 25}, {1560, 12}, {1710, 14}, {1820, 18},
                                         {1880, 18}, {1930, 20}, {2000, 10}, {2050, 12}, {2100, 14},
                                         {2140, 16}, {2150, 18}, {2200, 20}};
    const auto plan = cuttingPlan(orders, {5600}, 0);
    ASSERT_TRUE(plan.hasValue());
    plan_check::expectSound(*plan, orders, 0);
    EXPECT_EQ(plan->piecesMm, 407160);
    EXPECT_EQ(plan_check::barCount(*plan), 73);
    EXPECT_TRUE(plan->isProvedBest);
    EXPECT_NEAR(100 * plan->leftMm / plan->stockMm, 0.401, 0.0005);
}

// Rolls of 100 in: V. Chvatal, Linear Programming (1983), chapter 13 (data read in two retellings;
// best plan 453 rolls, the linear programme giving 452.25: from memory).
TEST(CuttingPlanPublished, rollsOf100Inches) {
    const std::vector<PieceToCut> orders{{45, 97}, {36, 610}, {31, 395}, {14, 211}};
    const auto plan = cuttingPlan(orders, {100}, 0);
    ASSERT_TRUE(plan.hasValue());
    plan_check::expectSound(*plan, orders, 0);
    EXPECT_EQ(plan_check::barCount(*plan), 453);
    EXPECT_TRUE(plan->isProvedBest);
    EXPECT_EQ(plan->leastStockMm, 45300);
}

// u120_00 of E. Falkenauer, A hybrid grouping genetic algorithm for bin packing, Journal of
// Heuristics 2 (1996), as spread by the OR-Library (data and the best known 48 read). Longest first
// takes 49, so the search has to find the plan.
TEST(CuttingPlanPublished, falkenauerU120) {
    const std::vector<int> sizes{
        42, 69, 67, 57, 93, 90, 38, 36, 45, 42, 33, 79, 27, 57, 44, 84, 86, 92, 46, 38,
        85, 33, 82, 73, 49, 70, 59, 23, 57, 72, 74, 69, 33, 42, 28, 46, 30, 64, 29, 74,
        41, 49, 55, 98, 80, 32, 25, 38, 82, 30, 35, 39, 57, 84, 62, 50, 55, 27, 30, 36,
        20, 78, 47, 26, 45, 41, 58, 98, 91, 96, 73, 84, 37, 93, 91, 43, 73, 85, 81, 79,
        71, 80, 76, 83, 41, 78, 70, 23, 42, 87, 43, 84, 60, 55, 49, 78, 73, 62, 36, 44,
        94, 69, 32, 96, 70, 84, 58, 78, 25, 80, 58, 66, 83, 24, 98, 60, 42, 43, 43, 39};
    ASSERT_EQ(sizes.size(), 120U);
    std::vector<PieceToCut> pieces;
    for (const int size : sizes) pieces.push_back({static_cast<double>(size), 1});
    const auto plan = cuttingPlan(pieces, {150}, 0);
    ASSERT_TRUE(plan.hasValue());
    plan_check::expectSound(*plan, pieces, 0);
    EXPECT_EQ(plan_check::barCount(*plan), 48);
    EXPECT_TRUE(plan->isProvedBest);
    const auto hasty = cuttingPlan(pieces, {150}, 0, {1});
    EXPECT_EQ(plan_check::barCount(*hasty), 49);
    EXPECT_FALSE(hasty->isProvedBest);
}

}  // namespace
}  // namespace coutil
