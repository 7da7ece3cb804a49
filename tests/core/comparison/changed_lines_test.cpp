// What changed between two patterns, on rectangles that can be reckoned by hand.
#include "core/comparison/changed_lines.h"

#include <gtest/gtest.h>

#include "tests/core/comparison/drawn_levels.h"
#include "tests/core/pattern/two_panels.h"

namespace coutil {
namespace {

Pattern plain() {
    Pattern pattern = samples::twoPanels();
    samples::drawLevels(pattern);
    return pattern;
}

// The back edge of panel 1, 4 mm in at +30 over 40 mm to either side, straight.
Pattern pinned() {
    Pattern pattern = plain();
    pattern.panels[0].edges[1].path =
        polylinePath({{100, -80}, {100, -10}, {96, 30}, {100, 70}, {100, 120}});
    return pattern;
}

TEST(ChangedLines, nothingAgainstItself) {
    for (const PanelChange& change : changedLines(plain(), plain())) {
        EXPECT_FALSE(change.isChanged()) << change.name;
    }
}

TEST(ChangedLines, onlyTheStretchThatLeftTheLine) {
    const auto changes = changedLines(plain(), pinned(), Registration::ownFrame);
    ASSERT_EQ(changes.size(), 2U);
    EXPECT_FALSE(changes[1].isChanged());
    ASSERT_EQ(changes[0].ofB.size(), 1U);
    const ChangedStretch& stretch = changes[0].ofB[0];
    EXPECT_EQ(stretch.edge, 1U);
    // The line parts by 0.05 mm (kChangedLineMm) at 0.05 / 4 * 40 = 0.5 mm from its corners, found
    // to 0.01 mm; lengths along the slanted line are 0.5 % longer.
    EXPECT_NEAR(stretch.fromMm, 70.5, 0.03);
    EXPECT_NEAR(stretch.toMm, 70 + 2 * 40.1995 - 0.5, 0.03);
    EXPECT_NEAR(stretch.farthestMm, 4, 1e-6);
    EXPECT_NEAR(stretch.farthestAt.y(), 30, 1e-6);
    ASSERT_EQ(changes[0].ofA.size(), 1U);
    EXPECT_NEAR(changes[0].ofA[0].fromMm, 70.5, 0.6);
}

TEST(ChangedLines, aMovedWaistMarkOnAnUnmovedEdgeIsTold) {
    Pattern moved = plain();
    *moved.panels[1].edges[3].waistMarkAtMm += 3;
    const auto changes = changedLines(plain(), moved, Registration::ownFrame);
    ASSERT_EQ(changes[1].ofB.size(), 1U);
    EXPECT_EQ(changes[1].ofB[0].fromMm, 123);
    EXPECT_EQ(changes[1].ofB[0].toMm, 123);
}

TEST(ChangedLines, aMovedLevelIsTold) {
    Pattern moved = plain();
    moved.levels[0].heightMm = 6;
    samples::drawLevels(moved);
    const auto changes = changedLines(plain(), moved, Registration::ownFrame);
    EXPECT_EQ(changes[0].movedLevels, std::vector<std::string>{"waist"});
    EXPECT_TRUE(changes[0].ofB.empty());
}

TEST(ChangedLines, aPanelOfOnlyOneIsChanged) {
    Pattern without = plain();
    without.panels.pop_back();
    without.seams.clear();
    const auto changes = changedLines(plain(), without);
    ASSERT_EQ(changes.size(), 2U);
    EXPECT_FALSE(changes[1].inB);
    EXPECT_TRUE(changes[1].isChanged());
}

}  // namespace
}  // namespace coutil
