#include "core/pattern/pattern.h"

#include <set>

#include <gtest/gtest.h>

#include "tests/core/pattern/two_panels.h"

namespace coutil {
namespace {

TEST(Pattern, outlineIsClosedAndCounterClockwise) {
    const auto pattern = samples::twoPanels();
    const Path outline = outlineOf(pattern.panels[0]);
    EXPECT_EQ(outline.pieces.size(), 4U);
    EXPECT_EQ(outline.start(), outline.end());
    EXPECT_NEAR(signedAreaMm2(outline), 100 * 200, 1e-9);
}

TEST(Pattern, seamPositionIsTheSameHeightOnBothEdges) {
    const auto pattern = samples::twoPanels();
    const Edge& front = edgeAt(pattern, pattern.seams[0].front);
    const Edge& back = edgeAt(pattern, pattern.seams[0].back);
    for (const double position : {-80.0, -33.0, 0.0, 57.5, 120.0}) {
        ASSERT_TRUE(pointAtSeamPosition(front, position)) << position;
        EXPECT_NEAR(pointAtSeamPosition(front, position)->y(), position, 1e-9);
        EXPECT_NEAR(pointAtSeamPosition(back, position)->y(), position, 1e-9);
    }
    EXPECT_FALSE(pointAtSeamPosition(front, 120.1));
    EXPECT_FALSE(pointAtSeamPosition(back, -80.1));
    EXPECT_FALSE(pointAtSeamPosition(pattern.panels[0].edges[2], 0));  // the top has no waist mark
}

TEST(Pattern, seamLengths) {
    const auto pattern = samples::twoPanels();
    for (const EdgeRef& ref : {pattern.seams[0].front, pattern.seams[0].back}) {
        const auto lengths = seamLengthsOf(edgeAt(pattern, ref));
        EXPECT_NEAR(lengths.aboveWaistMm, 120, 1e-9);
        EXPECT_NEAR(lengths.belowWaistMm, 80, 1e-9);
    }
}

TEST(Pattern, masterLaysPanelsSideBySideAtTheWaist) {
    const auto pattern = samples::twoPanels();
    const auto placements = masterPlacements(pattern, 30);
    ASSERT_EQ(placements.size(), 2U);
    EXPECT_EQ(placements[0].shift, Vector(0, 0));
    EXPECT_NEAR(placements[1].shift.x(), 130, 1e-9);
    EXPECT_EQ(placements[1].shift.y(), 0);
}

TEST(Pattern, widthAtHeight) {
    const auto pattern = samples::twoPanels();
    EXPECT_NEAR(*widthAtHeightMm(pattern.panels[0], 33), 100, 1e-9);
    EXPECT_FALSE(widthAtHeightMm(pattern.panels[0], 121));
    EXPECT_FALSE(widthAtHeightMm(pattern.panels[0], -81));
}

TEST(Pattern, everyRoleHasItsOwnKey) {
    std::set<std::string_view> keys;
    for (int role = 0; role <= static_cast<int>(EdgeRole::dartLeg); ++role)
        EXPECT_TRUE(keys.insert(keyOf(static_cast<EdgeRole>(role))).second) << role;
    EXPECT_EQ(keyOf(EdgeRole::dartLeg), "dart_leg");
}

}  // namespace
}  // namespace coutil
