#include "core/block/level_table.h"

#include <gmock/gmock.h>

#include "tests/core/block/sample_bodies.h"

namespace coutil {
namespace {

const LevelRow& rowOf(const std::vector<LevelRow>& rows, LevelId id) {
    return *std::ranges::find(rows, id, &LevelRow::id);
}

TEST(LevelTable, easeAndGapArithmetic) {
    Style style;
    style.lacingGapMm = 60;
    style.lacingGapAtMm[LevelId::hip] = 80;
    style.easeMm = {{LevelId::waist, -50}, {LevelId::hip, 30}};
    const auto rows = levelTable(samples::average(), style);
    ASSERT_TRUE(rows);
    ASSERT_EQ(rows->size(), 6U);
    const LevelRow& waist = rowOf(*rows, LevelId::waist);
    EXPECT_EQ(waist.heightMm, 0);
    EXPECT_EQ(waist.targetMm, 760 - 50);
    EXPECT_EQ(waist.halfWidthMm(), (760.0 - 50 - 60) / 2);
    const LevelRow& hip = rowOf(*rows, LevelId::hip);
    EXPECT_EQ(hip.heightMm, -218);
    EXPECT_EQ(hip.halfWidthMm(), (1021.0 + 30 - 80) / 2);
    EXPECT_EQ(rowOf(*rows, LevelId::bust).halfWidthMm(), (947.0 - 60) / 2);
}

TEST(LevelTable, runsFromLowestToHighest) {
    const auto rows = levelTable(samples::average(), Style{});
    ASSERT_TRUE(rows);
    for (std::size_t i = 1; i < rows->size(); ++i)
        EXPECT_LT((*rows)[i - 1].heightMm, (*rows)[i].heightMm);
    EXPECT_EQ(rows->front().id, LevelId::hip);
    EXPECT_EQ(rows->back().id, LevelId::aboveBust);
}

TEST(LevelTable, oneGirthBelowTheWaistIsEnough) {
    Body body = samples::average();
    body.valuesMm.erase(Measurement::topHipGirth);
    const auto rows = levelTable(body, Style{});
    ASSERT_TRUE(rows);
    EXPECT_EQ(rows->size(), 5U);
    body.valuesMm.erase(Measurement::hipGirth);
    const auto none = levelTable(body, Style{});
    EXPECT_FALSE(none);
    ASSERT_EQ(none.problems.size(), 1U);
    EXPECT_EQ(none.problems.front().code, ProblemCode::measurementMissing);
    EXPECT_EQ(none.problems.front().subject, "hip_girth");
}

TEST(LevelTable, namesEveryMissingMeasurement) {
    Body body = samples::average();
    body.valuesMm.erase(Measurement::bustGirth);
    body.valuesMm.erase(Measurement::waistToUnderBust);
    const auto rows = levelTable(body, Style{});
    EXPECT_FALSE(rows);
    std::vector<std::string> subjects;
    for (const auto& problem : rows.problems) subjects.push_back(problem.subject);
    EXPECT_THAT(subjects, testing::UnorderedElementsAre("bust_girth", "waist_to_under_bust"));
}

TEST(LevelTable, underBustOverTheBustIsRefused) {
    Body body = samples::average();
    body.valuesMm[Measurement::waistToUnderBust] = 140;
    const auto rows = levelTable(body, Style{});
    EXPECT_FALSE(rows);
    ASSERT_FALSE(rows.problems.empty());
    EXPECT_EQ(rows.problems.front().code, ProblemCode::levelOrderWrong);
    EXPECT_EQ(rows.problems.front().subject, "bust");
    EXPECT_EQ(rows.problems.front().detail, "under_bust");
}

TEST(LevelTable, armpitCloseOverTheBustGivesNoLevelOfItsOwn) {
    Body body = samples::average();
    body.valuesMm[Measurement::waistToArmpit] = 142;
    const auto rows = levelTable(body, Style{});
    ASSERT_TRUE(rows);
    EXPECT_EQ(rows->back().id, LevelId::bust);
}

TEST(LevelTable, gapThatLeavesNothingIsRefused) {
    Body body = samples::petite();
    Style style;
    style.panelsPerHalf = 7;
    style.easeMm[LevelId::waist] = -300;
    style.lacingGapAtMm[LevelId::waist] = 200;
    const auto rows = levelTable(body, style);
    EXPECT_FALSE(rows);
    ASSERT_EQ(rows.problems.size(), 1U);
    EXPECT_EQ(rows.problems.front().code, ProblemCode::panelTooNarrow);
    EXPECT_EQ(rows.problems.front().subject, "waist");
}

}  // namespace
}  // namespace coutil
