// Closed forms, and a dense search that knows nothing of ours.
#include "core/geometry/largest_distance.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "core/geometry/tolerances.h"
#include "tests/core/geometry/known_curves.h"
#include "tests/core/geometry/random_curves.h"

namespace coutil {
namespace {

Path shifted(const Path& path, const Vector& by) { return placed(path, Placement{.shift = by}); }

// A straight edge moved square to itself: every place is as far as the shift (computed).
TEST(LargestDistance, shiftedStraightEdge) {
    const Path edge = straightPath({10, -90}, {10, 210});
    for (const double shiftMm : {0.001, 0.5, 12.0}) {
        const auto largest = largestDistance(edge, shifted(edge, {shiftMm, 0}));
        EXPECT_NEAR(largest.distanceMm, shiftMm, 1e-9);
    }
}

// Any curve shifted: the ends are as far apart as the shift, and nothing can be farther.
TEST(LargestDistance, concentricArcsAreTheDifferenceOfTheirRadii) {
    // A whole circle as four cubics is round to 2.7253e-4 of its radius (checks.md, computed).
    const auto largest =
        largestDistance(testing::wholeCircle({0, 0}, 100), testing::wholeCircle({0, 0}, 107));
    EXPECT_NEAR(largest.distanceMm, 7, 107 * 2.7253e-4);
    EXPECT_GE(largest.distanceMm, 7);
}

// A circle shifted by d: the far points are r + d from the other's centre, so d from the other.
TEST(LargestDistance, shiftedCircleIsFarthestAlongTheShift) {
    const auto circle = testing::wholeCircle({0, 0}, 60);
    const auto largest = largestDistance(circle, shifted(circle, {3, 4}));
    EXPECT_NEAR(largest.distanceMm, 5, 60 * 2.7253e-4 * 2);
}

// A bump between two stations: parabola over its chord, height a x^2 at the middle (computed).
TEST(LargestDistance, findsTheTopOfABump) {
    for (const double middleMm : {51.3, 77.77, 123.4}) {
        const double heightMm = 6;
        const double reachMm = 40;
        Path bump{{straightCubic({0, 0}, {middleMm - reachMm, 0})}};
        Path arch{{testing::parabola(-heightMm / (reachMm * reachMm), -reachMm, reachMm)}};
        bump = joined(bump, shifted(arch, {middleMm, heightMm}));
        bump = joined(bump, straightPath({middleMm + reachMm, 0}, {200, 0}));
        const auto largest = largestDistance(straightPath({0, 0}, {200, 0}), bump);
        EXPECT_NEAR(largest.distanceMm, heightMm, 1e-4);
        EXPECT_NEAR(pointAt(bump, largest.onSecond).x(), middleMm, 0.2);
    }
}

// One edge runs on where the other ends.
TEST(LargestDistance, seesALongerEdgeFromEitherSide) {
    const Path edge = straightPath({0, 0}, {0, 200});
    const Path longer = straightPath({0, 0}, {0, 211});
    EXPECT_NEAR(largestDistance(edge, longer).distanceMm, 11, 1e-9);
    const auto largest = largestDistance(longer, edge);
    EXPECT_NEAR(largest.distanceMm, 11, 1e-9);
    EXPECT_EQ(pointAt(longer, largest.onFirst), Point(0, 211));
    EXPECT_EQ(pointAt(edge, largest.onSecond), Point(0, 200));
}

TEST(LargestDistance, nothingBetweenAPathAndItself) {
    const auto circle = testing::wholeCircle({1, 2}, 33);
    EXPECT_EQ(largestDistance(circle, circle).distanceMm, 0);
}

Path gentleEdge(testing::RandomCurves& random) {
    std::vector<Point> points;
    for (int i = 0; i <= 6; ++i) points.emplace_back(random.number(0, 12), 50.0 * i);
    return fittedThrough(points, Vector::Zero(), Vector::Zero());
}

double dense(const Path& from, const Path& to) {
    double largestMm = 0;
    const double wholeMm = lengthMm(from);
    for (double mm = 0; mm <= wholeMm; mm += 0.25)
        largestMm = std::max(largestMm, closestOn(to, pointAtLength(from, mm)).distanceMm);
    return std::max(largestMm, closestOn(to, from.end()).distanceMm);
}

TEST(LargestDistance, agreesWithADenseSearchOnEdgesOfPanels) {
    testing::RandomCurves random(20260314);
    for (int run = 0; run < 60; ++run) {
        const Path a = gentleEdge(random);
        const Path b = gentleEdge(random);
        const auto largest = largestDistance(a, b);
        const double judgeMm = std::max(dense(a, b), dense(b, a));
        EXPECT_NEAR(largest.distanceMm, judgeMm, tolerance::kCompareSearchMm)
            << testing::written(a) << testing::written(b);
        EXPECT_NEAR((pointAt(a, largest.onFirst) - pointAt(b, largest.onSecond)).norm(),
                    largest.distanceMm, 1e-6);
    }
}

}  // namespace
}  // namespace coutil
