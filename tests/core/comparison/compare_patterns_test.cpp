// Two straight panels of 100 x 200 mm: every figure can be reckoned by hand.
#include <algorithm>

#include <gtest/gtest.h>

#include "core/comparison/comparison.h"
#include "tests/core/comparison/drawn_levels.h"
#include "tests/core/pattern/two_panels.h"

namespace coutil {
namespace {

// The back edge of panel 1 moved in, and the front edge of panel 2: so much at the height, fading
// to nothing over `fadeMm`, straight.
Pattern takenIn(double inFrontMm, double behindMm, double atMm, double fadeMm) {
    Pattern pattern = samples::twoPanels();
    const auto line = [&](double x, double amountMm, bool runsUp) {
        std::vector<Point> points{
            {x, -80}, {x, atMm - fadeMm}, {x + amountMm, atMm}, {x, atMm + fadeMm}, {x, 120}};
        if (!runsUp) std::ranges::reverse(points);
        return polylinePath(points);
    };
    pattern.panels[0].edges[1].path = line(100, -inFrontMm, true);
    pattern.panels[1].edges[3].path = line(0, behindMm, false);
    samples::drawLevels(pattern);
    return pattern;
}

Pattern plain() {
    Pattern pattern = samples::twoPanels();
    samples::drawLevels(pattern);
    return pattern;
}

const SeamComparison& seamNamed(const Comparison& comparison, const std::string& name) {
    return *std::ranges::find(comparison.seams, name, &SeamComparison::name);
}

TEST(ComparePatterns, pinnedSeamIsToldAtItsLevelAndItsPlace) {
    const auto comparison = comparePatterns(plain(), takenIn(6, 4, 30, 60));
    ASSERT_EQ(comparison.seams.size(), 3U);
    EXPECT_EQ(comparison.seams[0].name, "centre front");
    EXPECT_EQ(comparison.seams[2].name, "centre back");
    const auto& seam = seamNamed(comparison, "1-2");
    ASSERT_EQ(seam.levels.size(), 1U);
    // At the waist, 30 mm from the reading over a fade of 60 mm: half of it.
    EXPECT_NEAR(*seam.levels[0].amountMm, 5, 1e-9);
    EXPECT_NEAR(*seam.levels[0].inFrontMm, 3, 1e-9);
    EXPECT_NEAR(*seam.levels[0].behindMm, 2, 1e-9);
    ASSERT_TRUE(seam.largest);
    EXPECT_NEAR(seam.largest->amountMm, 10, 0.01);
    EXPECT_NEAR(seam.largest->positionMm, 30, 0.05);
    EXPECT_EQ(seamNamed(comparison, "centre front").levels[0].amountMm, 0);
    EXPECT_EQ(seamNamed(comparison, "centre back").largest->amountMm, 0);
}

TEST(ComparePatterns, girthsOfALevelAreThoseOfTheTables) {
    const auto comparison = comparePatterns(plain(), takenIn(6, 4, 0, 60));
    ASSERT_EQ(comparison.levels.size(), 1U);
    const auto& waist = comparison.levels[0];
    EXPECT_EQ(waist.bodyMm, 460);
    EXPECT_NEAR(*waist.aMm, 450, 1e-9);
    EXPECT_NEAR(*waist.bMm, 430, 1e-9);  // 10 mm off each half
    EXPECT_NEAR(*waist.differenceMm, -20, 1e-9);
}

TEST(ComparePatterns, edgesSayWhereTheyMovedMost) {
    const auto comparison = comparePatterns(plain(), takenIn(6, 4, 30, 60));
    const auto& edges = comparison.panels[0].edges;
    ASSERT_EQ(edges.size(), 4U);
    const auto& back = *std::ranges::find(edges, "seam 1-2", &EdgeComparison::edge);
    EXPECT_NEAR(back.largestMm, 6, 0.01);
    EXPECT_NEAR(back.onB.x(), 94, 0.05);
    EXPECT_NEAR(back.onB.y(), 30, 0.2);
    EXPECT_NEAR(*back.alongAMm, 30, 0.2);
    for (const auto& edge : edges) {
        if (&edge == &back) continue;
        EXPECT_EQ(edge.largestMm, 0) << edge.edge;
    }
}

TEST(ComparePatterns, areasAreThoseOfThePolygons) {
    const auto comparison = comparePatterns(plain(), takenIn(6, 4, 30, 60));
    EXPECT_NEAR(*comparison.panels[0].areaAMm2, 20000, 1e-6);
    EXPECT_NEAR(*comparison.panels[0].areaBMm2, 20000 - 6 * 60, 1e-6);
    EXPECT_NEAR(*comparison.panels[1].areaBMm2, 20000 - 4 * 60, 1e-6);
}

TEST(ComparePatterns, edgeHeightsAreSeamPositions) {
    Pattern raised = plain();
    auto& edges = raised.panels[1].edges;  // its back corner 7 mm up
    edges[1].path = straightPath({100, -80}, {100, 127});
    edges[2].path = straightPath({100, 127}, {0, 120});
    const auto comparison = comparePatterns(plain(), raised);
    ASSERT_EQ(comparison.edgeHeights.size(), 6U);
    const auto& top = comparison.edgeHeights[2];
    EXPECT_EQ(top.seam, "centre back");
    EXPECT_NEAR(*top.aMm, 120, 1e-9);
    EXPECT_NEAR(*top.bMm, 127, 1e-9);
    EXPECT_NEAR(*top.differenceMm, 7, 1e-9);
    EXPECT_EQ(comparison.edgeHeights[3].line, EdgeRole::bottom);
    EXPECT_NEAR(*comparison.edgeHeights[3].aMm, -80, 1e-9);
    EXPECT_EQ(comparison.edgeHeights[3].differenceMm, 0);
}

// Every stretch moved: nothing is shared, so the middles of the waist lines lie on each other and
// each edge has half of the difference.
TEST(ComparePatterns, panelsWithoutASharedStretchAreLaidByTheirMiddles) {
    Pattern wider = plain();
    auto& panel = wider.panels[0];
    panel.edges[0].path = straightPath({-1, -80}, {105, -80});
    panel.edges[1].path = straightPath({105, -80}, {105, 120});
    panel.edges[2].path = straightPath({105, 120}, {-1, 120});
    panel.edges[3].path = straightPath({-1, 120}, {-1, -80});
    const auto automatic = comparePatterns(plain(), wider);
    EXPECT_NEAR(automatic.panels[0].shiftOfB.x(), -2, 1e-9);
    EXPECT_NEAR(automatic.panels[0].edges[1].largestMm, 3, 1e-9);
    EXPECT_NEAR(automatic.panels[0].edges[3].largestMm, 3, 1e-9);
    const auto asDrawn = comparePatterns(plain(), wider, Registration::ownFrame);
    EXPECT_NEAR(asDrawn.panels[0].edges[1].largestMm, 5, 1e-9);
    EXPECT_NEAR(asDrawn.panels[0].edges[3].largestMm, 1, 1e-9);
}

// Left panels as they are, the right ones taken in.
Pattern whole() {
    const Pattern left = plain();
    const Pattern right = takenIn(6, 4, 0, 60);
    Pattern both = left;
    for (Panel& panel : both.panels) panel.side = PanelSide::left;
    for (Panel panel : right.panels) {
        panel.side = PanelSide::right;
        both.panels.push_back(std::move(panel));
    }
    both.seams.push_back({.name = "1-2", .front = {2, 1}, .back = {3, 3}});
    both.levels[0].patternMm = 450 - 10;
    return both;
}

TEST(ComparePatterns, aHalfStandsForBothSidesOfAWhole) {
    const auto comparison = comparePatterns(plain(), whole());
    ASSERT_EQ(comparison.panels.size(), 4U);
    EXPECT_EQ(comparison.panels[2].name, "1");
    EXPECT_EQ(comparison.panels[2].side, PanelSide::right);
    EXPECT_EQ(comparison.panels[2].inA, 0U);
    EXPECT_EQ(comparison.panels[2].inB, 2U);
    ASSERT_EQ(comparison.seams.size(), 6U);
    EXPECT_EQ(comparison.seams[1].levels[0].amountMm, 0);
    EXPECT_EQ(comparison.seams[4].side, PanelSide::right);
    EXPECT_NEAR(*comparison.seams[4].levels[0].amountMm, 10, 1e-9);
    EXPECT_NEAR(*comparison.levels[0].differenceMm, -10, 1e-9);
}

TEST(CompareSides, rightAgainstLeft) {
    const auto comparison = compareSides(whole());
    ASSERT_EQ(comparison.panels.size(), 2U);
    EXPECT_EQ(comparison.panels[0].inA, 0U);
    EXPECT_EQ(comparison.panels[0].inB, 2U);
    ASSERT_EQ(comparison.seams.size(), 3U);
    EXPECT_NEAR(*comparison.seams[1].levels[0].amountMm, 10, 1e-9);
    EXPECT_NEAR(comparison.panels[0].edges[1].largestMm, 6, 0.01);
    // Girths as if both halves were like this one.
    EXPECT_NEAR(*comparison.levels[0].aMm, 450, 1e-9);
    EXPECT_NEAR(*comparison.levels[0].bMm, 430, 1e-9);
}

TEST(CompareSides, aSymmetricPatternHasNoDifference) {
    const auto comparison = compareSides(plain());
    ASSERT_EQ(comparison.panels.size(), 2U);
    for (const auto& panel : comparison.panels)
        for (const auto& edge : panel.edges) EXPECT_EQ(edge.largestMm, 0);
    EXPECT_EQ(comparison.levels[0].differenceMm, 0);
}

TEST(ComparePatterns, splitPanelsAreInOneOnly) {
    Pattern split = plain();
    split.panels[1].name = "2a";
    split.panels.push_back(samples::rectanglePanel("2b", "seam 2a-2b", "centre back"));
    split.panels[1].edges[1].name = "seam 2a-2b";
    split.seams.push_back({.name = "2a-2b", .front = {1, 1}, .back = {2, 3}});
    const auto comparison = comparePatterns(plain(), split);
    std::vector<std::string> names;
    for (const auto& panel : comparison.panels) names.push_back(panel.name);
    EXPECT_EQ(names, (std::vector<std::string>{"1", "2a", "2b", "2"}));
    EXPECT_FALSE(comparison.panels[3].inB);
    EXPECT_FALSE(comparison.panels[3].areaBMm2);
    EXPECT_TRUE(comparison.panels[3].edges.empty());
    const auto& seam = seamNamed(comparison, "1-2");
    EXPECT_TRUE(seam.isInA && seam.isInB);
    EXPECT_EQ(seam.levels[0].inFrontMm, 0);
    EXPECT_FALSE(seam.levels[0].behindMm);
    EXPECT_FALSE(seam.levels[0].amountMm);
    EXPECT_FALSE(seamNamed(comparison, "2a-2b").isInA);
}

}  // namespace
}  // namespace coutil
