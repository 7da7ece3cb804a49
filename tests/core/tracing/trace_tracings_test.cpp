// Tracings of small patterns whose figures can be worked out by hand.
#include <gmock/gmock.h>

#include "core/tracing/tracing.h"
#include "tests/core/geometry/geos_judge.h"
#include "tests/core/tracing/plain_pattern.h"

namespace coutil {
namespace {

using samples::plainPattern;
using test::geosAreaMm2;
using test::geosPolygon;

double cutAreaMm2(const Tracing& tracing) {
    auto ring = flattened(tracing.cutting, 0.001);
    ring.pop_back();
    return geosAreaMm2(geosPolygon(ring));
}

std::vector<Tracing> traced(const Pattern& pattern, const AllowanceStyle& style = {}) {
    const auto tracings = traceTracings(pattern, style);
    EXPECT_TRUE(tracings.hasValue());
    EXPECT_TRUE(tracings.problems.empty());
    return tracings ? *tracings : std::vector<Tracing>{};
}

TEST(TraceTracings, boundPanelOnTheFold) {
    const auto tracings = traced(plainPattern());
    ASSERT_EQ(tracings.size(), 2U);
    EXPECT_THAT(tracings[0].allowancesMm, testing::ElementsAre(0, 10, 0, 0));
    EXPECT_THAT(tracings[1].allowancesMm, testing::ElementsAre(0, 15, 0, 10));
    EXPECT_EQ(tracings[0].panel, "1");
    // 100 x 350 and a seam allowance 10 wide, square at both ends.
    EXPECT_NEAR(cutAreaMm2(tracings[0]), 110 * 350, 1e-6);
    EXPECT_EQ(tracings[0].cutting.pieces.size(), 4U);
    EXPECT_EQ(tracings[0].sewing, plainPattern().panels[0].edges);
    EXPECT_EQ(tracings[0].grain, plainPattern().panels[0].grain);
    EXPECT_EQ(tracings[0].levels, plainPattern().panels[0].levels);
}

// The opening of panel 2 leans by 20 in 350: its facing is a parallelogram under the rims' mirror
// images, so it keeps the area 15 times the edge.
TEST(TraceTracings, facingIsTurnedBackAtBothRims) {
    const auto tracings = traced(plainPattern());
    const double opening = std::hypot(350, 20);
    const double panel = (100 + 120) / 2.0 * 350;
    EXPECT_NEAR(cutAreaMm2(tracings.at(1)), panel + 10 * 350 + 15 * opening, 0.1);
}

TEST(TraceTracings, unboundRims) {
    AllowanceStyle style;
    style.isTopBound = false;
    style.isBottomBound = false;
    style.edgeMm = 12;
    EXPECT_NEAR(cutAreaMm2(traced(plainPattern(), style).at(0)), 110 * (350 + 24), 1e-6);
}

TEST(TraceTracings, howManyToCut) {
    Pattern pattern = plainPattern();
    pattern.panels.push_back(samples::plainPanel("3", EdgeRole::seam, EdgeRole::seam));
    pattern.panels[2].side = PanelSide::left;
    const auto tracings = traced(pattern);
    EXPECT_EQ(tracings[0].cutCount, 1);
    EXPECT_TRUE(tracings[0].isOnFold);
    EXPECT_FALSE(tracings[0].isMirroredPair);
    EXPECT_EQ(tracings[1].cutCount, 2);
    EXPECT_TRUE(tracings[1].isMirroredPair);
    EXPECT_EQ(tracings[2].cutCount, 1);
    EXPECT_FALSE(tracings[2].isMirroredPair);
    EXPECT_EQ(tracings[2].side, PanelSide::left);
}

TEST(TraceTracings, widthsOfTheMaker) {
    AllowanceStyle style;
    style.byEdgeMm = {{"1/seam 1-2", 25}};
    const auto tracings = traced(plainPattern(), style);
    EXPECT_NEAR(cutAreaMm2(tracings[0]), 125 * 350, 1e-6);
    EXPECT_EQ(tracings[1].allowancesMm[3], 10);
}

TEST(TraceTracings, widthForAnEdgeThatIsNotThereIsTold) {
    AllowanceStyle style;
    style.byEdgeMm = {{"7/seam 6-7", 25}};
    const auto tracings = traceTracings(plainPattern(), style);
    EXPECT_TRUE(tracings.hasValue());
    ASSERT_EQ(tracings.problems.size(), 1U);
    EXPECT_EQ(tracings.problems[0].code, ProblemCode::styleUnknownKey);
    EXPECT_EQ(tracings.problems[0].severity, Severity::warning);
    EXPECT_EQ(tracings.problems[0].subject, "allowance.by_edge");
    EXPECT_EQ(tracings.problems[0].detail, "7/seam 6-7");
}

TEST(TraceTracings, impossibleWidthsAreOneClearProblem) {
    for (const double width : {-1.0, std::nan(""), HUGE_VAL}) {
        AllowanceStyle style;
        style.byEdgeMm = {{"2/seam 1-2", width}};
        const auto tracings = traceTracings(plainPattern(), style);
        EXPECT_FALSE(tracings.hasValue());
        ASSERT_EQ(tracings.problems.size(), 1U);
        EXPECT_EQ(tracings.problems[0].code, ProblemCode::styleValueOutOfRange);
        EXPECT_EQ(tracings.problems[0].subject, "allowance.by_edge.2/seam 1-2");
        EXPECT_EQ(tracings.problems[0].panel, "2");
        EXPECT_FALSE(tracings.problems[0].figures.empty());
    }
}

TEST(TraceTracings, problemsOfAnOutlineNameItsPanel) {
    Pattern pattern = plainPattern();
    pattern.panels[1].edges[0].path = straightPath({0, -150}, {90, -150});
    const auto tracings = traceTracings(pattern, {});
    EXPECT_FALSE(tracings.hasValue());
    ASSERT_EQ(tracings.problems.size(), 1U);
    EXPECT_EQ(tracings.problems[0].code, ProblemCode::outlineOpen);
    EXPECT_EQ(tracings.problems[0].panel, "2");
    EXPECT_TRUE(tracings.problems[0].at.has_value());
}

}  // namespace
}  // namespace coutil
