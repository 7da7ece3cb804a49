// The clean-up of raw loops, on loops whose winding numbers can be counted by hand.
#include "core/geometry/winding_cleanup.h"

#include <gtest/gtest.h>

#include "tests/core/geometry/geos_judge.h"

namespace coutil::test {
namespace {

double areaMm2(const InkRing& ring) { return static_cast<double>(doubleAreaUm2(ring)) / 2e6; }

TEST(WindingCleanup, aSimpleLoopStaysAsItIs) {
    const auto cleaned = positiveRegion({{0, 0}, {100, 0}, {100, 50}, {0, 50}});
    EXPECT_TRUE(cleaned.wasClean);
    EXPECT_DOUBLE_EQ(areaMm2(cleaned.outer), 5000);
    EXPECT_TRUE(cleaned.leftOut.empty());
}

TEST(WindingCleanup, clockwiseLoopsWindRoundNothing) {
    EXPECT_TRUE(positiveRegion({{0, 0}, {0, 50}, {100, 50}, {100, 0}}).outer.empty());
}

// A swallow's tail above the upper side winds clockwise and falls away.
TEST(WindingCleanup, negativeLoopsFallAway) {
    const auto cleaned =
        positiveRegion({{0, 0}, {100, 0}, {100, 50}, {40, 50}, {50, 60}, {60, 50}, {0, 50}});
    EXPECT_FALSE(cleaned.wasClean);
    EXPECT_TRUE(isSimple(cleaned.outer));
    EXPECT_NEAR(areaMm2(cleaned.outer), 5000, 1e-6);
}

TEST(WindingCleanup, placesCoveredTwiceStay) {
    // An L whose two arms run over each other at the end.
    const auto cleaned = positiveRegion({{0, 0},
                                         {100, 0},
                                         {100, 100},
                                         {0, 100},
                                         {0, 40},
                                         {30, 40},
                                         {30, 70},
                                         {70, 70},
                                         {70, 30},
                                         {20, 30},
                                         {20, 60},
                                         {0, 60}});
    ASSERT_FALSE(cleaned.outer.empty());
    EXPECT_TRUE(isSimple(cleaned.outer));
    EXPECT_GT(areaMm2(cleaned.outer), 100 * 100 - 50 * 40);
}

TEST(WindingCleanup, smallerPiecesAreNamed) {
    // A figure of eight of which both halves run counter-clockwise is two pieces.
    const auto cleaned = positiveRegion({{0, 0},
                                         {10, 0},
                                         {10, 10},
                                         {0, 10},
                                         {0, 0},
                                         {-1, -1},
                                         {-5, -1},
                                         {-5, -5},
                                         {-1, -5},
                                         {-1, -1}});
    EXPECT_DOUBLE_EQ(areaMm2(cleaned.outer), 100);
    ASSERT_EQ(cleaned.leftOut.size(), 1U);
    EXPECT_DOUBLE_EQ(cleaned.leftOut[0].areaMm2, 16);
    EXPECT_DOUBLE_EQ(cleaned.leftOut[0].sizeMm, 4);
}

}  // namespace
}  // namespace coutil::test
