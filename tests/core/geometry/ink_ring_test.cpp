// Rings on the ink grid: exact answers to small cases that can be drawn by hand.
#include "core/geometry/ink_ring.h"

#include <gtest/gtest.h>

namespace coutil::test {
namespace {

const InkRing kSquare{{0, 0}, {10, 0}, {10, 10}, {0, 10}};

TEST(InkRing, millimetresGoToTheNearestMicrometre) {
    EXPECT_EQ(onInkGrid({1.2344, -0.0006}), (InkPoint{1234, -1}));
    EXPECT_EQ(inMillimetres({1234, -1}), Point(1.234, -0.001));
}

TEST(InkRing, area) {
    EXPECT_EQ(doubleAreaUm2(kSquare), 200);
    EXPECT_EQ(doubleAreaUm2({{0, 0}, {0, 10}, {10, 10}, {10, 0}}), -200);
}

TEST(InkRing, cornersThatAreNone) {
    EXPECT_EQ(withoutStraightCorners(
                  {{5, 0}, {10, 0}, {10, 0}, {10, 10}, {7, 10}, {3, 10}, {0, 10}, {0, 0}, {2, 0}}),
              (InkRing{{10, 0}, {10, 10}, {0, 10}, {0, 0}}));
    EXPECT_EQ(withoutStraightCorners(kSquare), kSquare);
}

TEST(InkRing, simpleOrNot) {
    EXPECT_TRUE(isSimple(kSquare));
    EXPECT_TRUE(isSimple({{0, 0}, {10, 0}, {10, 10}, {5, 1}, {0, 10}}));
    EXPECT_FALSE(isSimple({{0, 0}, {10, 0}})) << "too few corners";
    EXPECT_FALSE(isSimple({{0, 0}, {10, 10}, {10, 0}, {0, 10}})) << "sides cross";
    EXPECT_FALSE(isSimple({{0, 0}, {10, 0}, {10, 10}, {5, 0}, {0, 10}})) << "corner on a side";
    EXPECT_FALSE(isSimple({{0, 0}, {5, 5}, {10, 0}, {10, 10}, {5, 5}, {0, 10}}))
        << "corner on a corner";
    EXPECT_FALSE(isSimple({{0, 0}, {10, 0}, {20, 0}, {10, 0}, {10, 10}})) << "folds back";
    EXPECT_FALSE(isSimple({{0, 0}, {10, 0}, {10, 0}, {10, 10}})) << "side without length";
}

TEST(InkRing, partedWhereItTouchesItself) {
    EXPECT_EQ(largestPartAtTouches(kSquare), kSquare);
    const InkRing atCorner =
        largestPartAtTouches({{0, 0}, {5, 5}, {10, 0}, {30, 10}, {5, 5}, {0, 10}});
    EXPECT_TRUE(isSimple(atCorner));
    EXPECT_EQ(doubleAreaUm2(atCorner), doubleAreaUm2({{5, 5}, {10, 0}, {30, 10}}));
    const InkRing onSide = largestPartAtTouches({{0, 0}, {10, 0}, {10, 10}, {5, 0}, {0, 30}});
    EXPECT_TRUE(isSimple(onSide));
    EXPECT_EQ(doubleAreaUm2(onSide), doubleAreaUm2({{0, 0}, {5, 0}, {0, 30}}));
}

}  // namespace
}  // namespace coutil::test
