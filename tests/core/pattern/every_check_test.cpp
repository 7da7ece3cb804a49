#include "core/pattern/every_check.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "tests/core/pattern/two_panels.h"

namespace coutil {
namespace {

double figure(const Problem& problem, const std::string& name) {
    return std::ranges::find(problem.figures, name, &Figure::name)->value;
}

TEST(EveryCheck, aSoundPatternHasNothingToSay) {
    EXPECT_TRUE(everyCheck(samples::twoPanels()).empty());
}

// A rise of 2 in 100 and back is a kink of 2 atan(0.02) = 2.292 degrees (computed).
TEST(EveryCheck, kinksAreFoundWhereTheyAre) {
    auto pattern = samples::twoPanels();
    pattern.panels[0].edges[2].path = polylinePath({{100, 120}, {50, 121}, {0, 120}});
    const auto problems = checkKinks(pattern);
    ASSERT_EQ(problems.size(), 1U);
    EXPECT_EQ(problems[0].severity, Severity::warning);
    EXPECT_EQ(problems[0].subject, "top");
    EXPECT_EQ(problems[0].panel, "1");
    EXPECT_EQ(problems[0].at, Point(50, 121));
    EXPECT_NEAR(figure(problems[0], "value"), 2.2916, 1e-3);
    // 0.4 in 50: 0.917 degrees, within the degree.
    pattern.panels[0].edges[2].path = polylinePath({{100, 120}, {50, 120.4}, {0, 120}});
    EXPECT_TRUE(checkKinks(pattern).empty());
}

TEST(EveryCheck, aGirthOffItsTargetIsANoteWithBodyAndFigures) {
    auto pattern = samples::twoPanels();
    pattern.levels[0].patternMm = 444;
    const auto problems = checkGirths(pattern);
    ASSERT_EQ(problems.size(), 1U);
    EXPECT_EQ(problems[0].severity, Severity::note);
    EXPECT_EQ(figure(problems[0], "value"), 444);
    EXPECT_EQ(figure(problems[0], "target"), 450);
    EXPECT_EQ(figure(problems[0], "difference"), -6);
    EXPECT_EQ(figure(problems[0], "body"), 460);
    pattern.levels[0].patternMm = 449.6;
    EXPECT_TRUE(checkGirths(pattern).empty());
}

// More than a tenth of the body wants a caution (common practice, no source).
TEST(EveryCheck, aReductionIsTakenFromThePatternItself) {
    auto pattern = samples::twoPanels();
    pattern.levels[0].patternMm = 414;  // 460 less 10 %
    EXPECT_TRUE(checkReduction(pattern).empty());
    pattern.levels[0].patternMm = 400;
    const auto problems = checkReduction(pattern);
    ASSERT_EQ(problems.size(), 1U);
    EXPECT_EQ(problems[0].severity, Severity::warning);
    EXPECT_EQ(figure(problems[0], "value"), 60);
    EXPECT_NEAR(figure(problems[0], "percent"), 13.0435, 1e-4);
}

Pattern wholePattern() {
    auto pattern = samples::twoPanels();
    const auto half = pattern.panels;
    for (Panel& panel : pattern.panels) panel.side = PanelSide::left;
    for (Panel panel : half) {
        panel.side = PanelSide::right;
        pattern.panels.push_back(std::move(panel));
    }
    return pattern;
}

TEST(EveryCheck, sidesThatDifferAreToldWithTheLargestDifference) {
    auto pattern = wholePattern();
    EXPECT_TRUE(checkSides(pattern).empty());
    pattern.panels[3].edges[1].path = straightPath({103, -80}, {103, 120});
    pattern.panels[2].edges[3].path = straightPath({-1, 120}, {-1, -80});
    const auto problems = checkSides(pattern);
    ASSERT_EQ(problems.size(), 1U);
    EXPECT_EQ(problems[0].severity, Severity::note);
    EXPECT_EQ(problems[0].subject, "centre back");
    EXPECT_NEAR(figure(problems[0], "value"), 3, 1e-9);
    ASSERT_TRUE(problems[0].at);
    EXPECT_EQ(problems[0].at->x(), 100);
}

TEST(EveryCheck, aPanelOfOneSideOnlyIsTold) {
    auto pattern = wholePattern();
    pattern.panels.pop_back();
    const auto problems = checkSides(pattern);
    ASSERT_EQ(problems.size(), 1U);
    EXPECT_EQ(problems[0].subject, "2");
    EXPECT_EQ(problems[0].panel, "2 left");
}

}  // namespace
}  // namespace coutil
