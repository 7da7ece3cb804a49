// Every promise, broken on purpose, is found and has its place.
#include <gtest/gtest.h>

#include "tests/core/pattern/two_panels.h"

namespace coutil {
namespace {

std::vector<ProblemCode> codesOf(const std::vector<Problem>& problems) {
    std::vector<ProblemCode> codes;
    for (const auto& problem : problems) codes.push_back(problem.code);
    return codes;
}

bool finds(const Pattern& pattern, ProblemCode code) {
    const auto codes = codesOf(checkPattern(pattern));
    return std::ranges::find(codes, code) != codes.end();
}

Edge& edgeOf(Pattern& pattern, std::size_t panel, std::size_t edge) {
    return pattern.panels[panel].edges[edge];
}

TEST(CheckPattern, soundPatternPasses) { EXPECT_TRUE(checkPattern(samples::twoPanels()).empty()); }

TEST(CheckPattern, longerEdgeIsFoundWithItsFigures) {
    auto pattern = samples::twoPanels();
    edgeOf(pattern, 1, 2).path = straightPath({100, 120}, {0, 120.4});
    edgeOf(pattern, 1, 3).path = straightPath({0, 120.4}, {0, -80});
    edgeOf(pattern, 1, 3).waistMarkAtMm = 120.4;
    const auto problems = checkPattern(pattern);
    ASSERT_EQ(problems.size(), 1U);
    EXPECT_EQ(problems[0].code, ProblemCode::seamLengthsDiffer);
    EXPECT_EQ(problems[0].subject, "1-2");
    EXPECT_EQ(problems[0].detail, "above");
    EXPECT_NEAR(problems[0].figures[2].value, -0.4, 1e-9);
}

TEST(CheckPattern, waistMarkOffTheWaistIsFoundOnBothParts) {
    auto pattern = samples::twoPanels();
    edgeOf(pattern, 1, 3).waistMarkAtMm = 121;
    EXPECT_EQ(codesOf(checkPattern(pattern)),
              (std::vector{ProblemCode::seamLengthsDiffer, ProblemCode::seamLengthsDiffer}));
}

TEST(CheckPattern, intendedEaseIsNoFault) {
    auto pattern = samples::twoPanels();
    edgeOf(pattern, 1, 3).path = straightPath({0, 125}, {0, -80});
    edgeOf(pattern, 1, 2).path = straightPath({100, 120}, {0, 125});
    pattern.seams[0].easeMm = 5;
    EXPECT_FALSE(finds(pattern, ProblemCode::seamLengthsDiffer));
    pattern.seams[0].easeMm = 4;
    EXPECT_TRUE(finds(pattern, ProblemCode::seamLengthsDiffer));
}

TEST(CheckPattern, kinkAcrossASeamIsFoundFromHalfADegreeOn) {
    for (const double riseMm : {0.8, 1.0}) {  // 0.458 and 0.573 degrees over 100 mm
        auto pattern = samples::twoPanels();
        edgeOf(pattern, 1, 2).path = straightPath({100, 120 + riseMm}, {0, 120});
        edgeOf(pattern, 1, 1).path = straightPath({100, -80}, {100, 120 + riseMm});
        EXPECT_EQ(finds(pattern, ProblemCode::lineBrokenAcrossSeam), riseMm > 0.9) << riseMm;
    }
}

TEST(CheckPattern, kinkAtTheBottomIsFoundToo) {
    auto pattern = samples::twoPanels();
    edgeOf(pattern, 0, 0).path = straightPath({0, -90}, {100, -80});
    edgeOf(pattern, 0, 3).path = straightPath({0, 120}, {0, -90});
    const auto problems = checkPattern(pattern);
    ASSERT_EQ(problems.size(), 1U);
    EXPECT_EQ(problems[0].detail, "bottom");
    EXPECT_EQ(problems[0].at, Point(100, -80));
}

TEST(CheckPattern, aGirthTableThatDoesNotSayWhatThePanelsMeasureIsFound) {
    auto pattern = samples::twoPanels();
    pattern.levels[0].targetMm = 440;  // a fitting may take a garment anywhere
    EXPECT_TRUE(checkPattern(pattern).empty());
    pattern.levels[0].patternMm = 450.02;
    ASSERT_EQ(codesOf(checkPattern(pattern)), std::vector{ProblemCode::girthTargetMissed});
    EXPECT_NEAR(checkPattern(pattern)[0].figures[0].value, 450, 1e-9);
    pattern.levels[0].patternMm = 450.005;
    EXPECT_TRUE(checkPattern(pattern).empty());
}

// Errors are only what cannot be sewn: edges of one seam equal within 1 mm can (common practice).
TEST(CheckPattern, whatCanStillBeSewnIsAWarning) {
    for (const double longerMm : {0.4, 0.95, 1.05}) {
        auto pattern = samples::twoPanels();
        edgeOf(pattern, 1, 2).path = straightPath({100, 120}, {0, 120 + longerMm});
        edgeOf(pattern, 1, 3).path = straightPath({0, 120 + longerMm}, {0, -80});
        edgeOf(pattern, 1, 3).waistMarkAtMm = 120 + longerMm;
        const auto problems = checkPattern(pattern);
        ASSERT_FALSE(problems.empty());
        EXPECT_EQ(isError(problems[0]), longerMm > 1) << longerMm;
    }
}

TEST(CheckPattern, leftAndRightPanelsCountOnce) {
    auto pattern = samples::twoPanels();
    pattern.panels[0].side = PanelSide::left;
    pattern.panels[1].side = PanelSide::right;
    pattern.levels[0].targetMm = 250;
    pattern.levels[0].patternMm = 250;
    EXPECT_TRUE(checkPattern(pattern).empty());
}

TEST(CheckPattern, crossingOutlineIsFoundWhereItCrosses) {
    auto pattern = samples::twoPanels();
    // The top dips through the bottom.
    edgeOf(pattern, 0, 2).path = polylinePath({{100, 120}, {50, -130}, {0, 120}});
    const auto problems = checkPattern(pattern);
    ASSERT_TRUE(finds(pattern, ProblemCode::outlineCrossesItself));
    EXPECT_NEAR(problems[0].at->y(), -80, 1e-6);
}

TEST(CheckPattern, openOutlineIsFound) {
    auto pattern = samples::twoPanels();
    edgeOf(pattern, 0, 2).path = straightPath({100, 120}, {0.5, 120});
    EXPECT_TRUE(finds(pattern, ProblemCode::outlineOpen));
}

TEST(CheckPattern, narrowPlaceIsFoundWithItsLevel) {
    auto pattern = samples::twoPanels();
    edgeOf(pattern, 0, 1).path = polylinePath({{100, -80}, {11, 10}, {100, 120}});
    edgeOf(pattern, 0, 1).waistMarkAtMm.reset();
    const auto problems = checkPattern(pattern);
    ASSERT_TRUE(finds(pattern, ProblemCode::panelTooNarrow));
    EXPECT_EQ(problems[0].subject, "waist");
    EXPECT_EQ(problems[0].panel, "1");
    EXPECT_NEAR(problems[0].figures[0].value, 11, 0.03);
}

}  // namespace
}  // namespace coutil
