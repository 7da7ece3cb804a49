// Cutting plans of bones: losses, reels, several stock lengths, and what is refused.
#include <cmath>
#include <limits>
#include <random>

#include "tests/core/making_up/plan_check.h"

namespace coutil {
namespace {

using plan_check::barCount;
using plan_check::expectSound;

TEST(CuttingPlan, aPieceAtTheEndOfTheBarNeedsNoCut) {
    // Three pieces of 330 and two cuts of 5 are a metre; a third cut would not fit.
    const auto plan = cuttingPlan({{330, 3}}, {1000}, 5);
    ASSERT_TRUE(plan.hasValue());
    expectSound(*plan, {{330, 3}}, 5);
    EXPECT_EQ(barCount(*plan), 1);
    EXPECT_EQ(plan->lossMm, 10);
    EXPECT_EQ(plan->leftMm, 0);
    EXPECT_EQ(barCount(*cuttingPlan({{330, 3}}, {1000}, 5.1)), 2);
    // The last cut may also turn the rest to dust.
    const auto dust = cuttingPlan({{332, 3}}, {1000}, 1.5);
    EXPECT_EQ(barCount(*dust), 1);
    EXPECT_NEAR(dust->lossMm, 4, 1e-9);
    EXPECT_EQ(dust->leftMm, 0);
}

TEST(CuttingPlan, aReelIsOneLongStock) {
    const std::vector<PieceToCut> bones{{320, 4}, {310, 8}, {280, 8}, {260, 4}};
    const auto plan = cuttingPlan(bones, {10000}, 2);
    ASSERT_TRUE(plan.hasValue());
    expectSound(*plan, bones, 2);
    EXPECT_EQ(plan->bars.size(), 1U);
    EXPECT_EQ(plan->leftMm, 10000 - (4 * 320 + 8 * 310 + 8 * 280 + 4 * 260) - 24 * 2);
    EXPECT_TRUE(plan->isProvedBest);
}

TEST(CuttingPlan, ofSeveralStocksTheLeastLengthThenTheFewestBars) {
    const auto shorter = cuttingPlan({{300, 2}}, {500, 1000, 700}, 0);
    EXPECT_EQ(shorter->stockMm, 700);
    // 1000 = 500 + 500: one bar is less to handle than two.
    const auto fewer = cuttingPlan({{500, 2}}, {500, 1000}, 0);
    EXPECT_EQ(fewer->stockMm, 1000);
    EXPECT_EQ(barCount(*fewer), 1);
}

TEST(CuttingPlan, equalLengthsAreOneRowAndNoneIsNoBar) {
    const auto plan = cuttingPlan({{250, 1}, {250, 3}, {100, 0}}, {1000}, 0);
    ASSERT_TRUE(plan.hasValue());
    ASSERT_EQ(plan->bars.size(), 1U);
    EXPECT_EQ(plan->bars[0].cuts, (std::vector<PieceToCut>{{250, 4}}));
    const auto nothing = cuttingPlan({}, {1000}, 2);
    ASSERT_TRUE(nothing.hasValue());
    EXPECT_TRUE(nothing->bars.empty());
    EXPECT_TRUE(nothing->isProvedBest);
}

std::vector<PieceToCut> randomBones(std::mt19937& random, int lengths, unsigned mostPairs) {
    std::vector<PieceToCut> bones;
    for (int i = 0; i < lengths; ++i) {
        bones.push_back({150 + 10 * static_cast<double>(random() % 31),
                         2 + 2 * static_cast<int>(random() % mostPairs)});
    }
    return bones;
}

// The sizes met here: a garment has up to a dozen lengths of bones in steps of 10 mm, each in
// pairs, cut from one or three stocks.
TEST(CuttingPlan, garmentsAreProvedBest) {
    std::mt19937 random(5);
    for (int k = 0; k < 60; ++k) {
        SCOPED_TRACE("garment " + std::to_string(k));
        const auto bones = randomBones(random, 4 + k % 7, 3);
        for (const std::vector<double>& stocks :
             {std::vector<double>{1000}, std::vector<double>{700, 1000, 1500}}) {
            const auto plan = cuttingPlan(bones, stocks, 1.5);
            ASSERT_TRUE(plan.hasValue());
            expectSound(*plan, bones, 1.5);
            EXPECT_TRUE(plan->isProvedBest);
        }
    }
}

// A whole chorus: 25 lengths, some 170 pieces. Where the steps do not reach to the proof, the plan
// is still within a rod of what is proved, and says so.
TEST(CuttingPlan, chorusesAreWithinARodOfTheBound) {
    std::mt19937 random(5);
    int proved = 0;
    for (int k = 0; k < 8; ++k) {
        SCOPED_TRACE("chorus " + std::to_string(k));
        const auto bones = randomBones(random, 25, 6);
        const auto plan = cuttingPlan(bones, {1000}, 1.5, {10'000'000});
        ASSERT_TRUE(plan.hasValue());
        expectSound(*plan, bones, 1.5);
        EXPECT_LE(plan->stockMm - plan->leastStockMm, 1000);
        EXPECT_EQ(plan->isProvedBest, plan->stockMm == plan->leastStockMm);
        proved += plan->isProvedBest;
    }
    EXPECT_GE(proved, 6);
}

TEST(CuttingPlan, theSameTaskGivesTheSamePlan) {
    const std::vector<PieceToCut> bones{{320, 5}, {310, 7}, {280, 9}, {260, 4}, {170, 6}};
    EXPECT_EQ(*cuttingPlan(bones, {1000, 700}, 1.5), *cuttingPlan(bones, {700, 1000, 700}, 1.5));
}

ProblemCode codeOf(const Outcome<CuttingPlan>& plan) {
    EXPECT_FALSE(plan.hasValue());
    EXPECT_EQ(plan.problems.size(), 1U);
    return plan.problems.front().code;
}

TEST(CuttingPlan, whatCannotBeCutIsTold) {
    const double none = std::numeric_limits<double>::quiet_NaN();
    const auto tooLong = cuttingPlan({{300, 2}, {1001, 1}}, {1000}, 0);
    EXPECT_EQ(codeOf(tooLong), ProblemCode::pieceLongerThanStock);
    EXPECT_EQ(tooLong.problems[0].figures[0].value, 1001);
    EXPECT_EQ(tooLong.problems[0].figures[1].value, 1000);
    for (const auto& refused :
         {cuttingPlan({{300, 2}}, {}, 0), cuttingPlan({{300, 2}}, {0}, 0),
          cuttingPlan({{300, 2}}, {none}, 0), cuttingPlan({{300, 2}}, {1000}, -1),
          cuttingPlan({{300, 2}}, {1000}, none), cuttingPlan({{-3, 2}}, {1000}, 0),
          cuttingPlan({{none, 2}}, {1000}, 0), cuttingPlan({{300, -1}}, {1000}, 0),
          cuttingPlan({{300, 8001}}, {1000}, 0), cuttingPlan({{300, 2}}, {200'000}, 0)}) {
        const ProblemCode code =
            refused.problems.empty() ? ProblemCode{} : refused.problems[0].code;
        EXPECT_FALSE(refused.hasValue());
        EXPECT_EQ(code, ProblemCode::makingUpOutOfRange);
    }
}

}  // namespace
}  // namespace coutil
