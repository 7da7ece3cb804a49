#include <gtest/gtest.h>

#include "core/geometry/path.h"
#include "tests/core/geometry/known_curves.h"
#include "tests/core/geometry/random_curves.h"

namespace coutil {
namespace {

using namespace coutil::testing;

TEST(CrossingsAtHeight, cubicParabolaHasItsRoots) {
    // y = x^3 - 3 x on -2..2 meets y = 0 in -sqrt 3, 0, sqrt 3, and touches y = 2 in -1.
    Cubic c = cubicParabola(1, -2, 2);
    for (Point* p : {&c.p0, &c.p1, &c.p2, &c.p3}) p->y() -= 3 * p->x();
    const auto zeros = crossingsAtHeight(Path{{c}}, 0);
    ASSERT_EQ(zeros.size(), 3U);
    EXPECT_NEAR(pointAt(c, zeros[0].t).x(), -std::sqrt(3), 1e-12);
    EXPECT_NEAR(pointAt(c, zeros[1].t).x(), 0, 1e-12);
    EXPECT_NEAR(pointAt(c, zeros[2].t).x(), std::sqrt(3), 1e-12);
    const auto touching = crossingsAtHeight(Path{{c}}, 2);
    ASSERT_EQ(touching.size(), 2U);
    EXPECT_NEAR(pointAt(c, touching[0].t).x(), -1, 1e-6);
    EXPECT_EQ(touching[1].t, 1);
    EXPECT_TRUE(crossingsAtHeight(Path{{c}}, 2.001).empty());
}

TEST(CrossingsAtHeight, aJointOnTheLevelCountsOnce) {
    const Path path = polylinePath({{0, 0}, {10, 50}, {30, 100}});
    const auto found = crossingsAtHeight(path, 50);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(pointAt(path, found[0]), Point(10, 50));
}

TEST(CrossingsAtHeight, anEndWithinRoundingOfTheLevelCounts) {
    EXPECT_EQ(crossingsAtHeight(straightPath({0, 0}, {10, 49.99999999999999}), 50).size(), 1U);
    EXPECT_TRUE(crossingsAtHeight(straightPath({0, 0}, {10, 49.9999}), 50).empty());
}

TEST(CrossingsAtHeight, aFlatStretchGivesItsEnds) {
    const Path path = polylinePath({{0, 0}, {10, 50}, {30, 50}, {40, 80}});
    const auto found = crossingsAtHeight(path, 50);
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(pointAt(path, found[0]), Point(10, 50));
    EXPECT_EQ(pointAt(path, found[1]), Point(30, 50));
}

TEST(CrossingsAtHeight, everySignChangeOfDenseSamplesIsFound) {
    RandomCurves random(41);
    for (int i = 0; i < 200; ++i) {
        const Path path = random.path(2, 300);
        const double height = random.number(50, 250);
        const auto found = crossingsAtHeight(path, height);
        for (const auto& at : found) EXPECT_NEAR(pointAt(path, at).y(), height, 1e-9);
        std::size_t changes = 0;
        for (const Cubic& c : path.pieces) {
            for (int k = 0; k < 1000; ++k) {
                changes += (pointAt(c, k / 1000.0).y() > height) !=
                                   (pointAt(c, (k + 1) / 1000.0).y() > height)
                               ? 1U
                               : 0U;
            }
        }
        // Samples may step over a pair of crossings, never over an odd number.
        EXPECT_GE(found.size(), changes) << written(path) << height;
        EXPECT_EQ((found.size() - changes) % 2, 0U) << written(path) << height;
    }
}

}  // namespace
}  // namespace coutil
