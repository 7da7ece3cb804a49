#include "core/geometry/path.h"

#include <numbers>

#include <gtest/gtest.h>

#include "core/geometry/cross_product.h"
#include "tests/core/geometry/known_curves.h"
#include "tests/core/geometry/random_curves.h"

namespace coutil {
namespace {

using namespace coutil::testing;

TEST(Path, areaOfPolygonsAndParabola) {
    EXPECT_NEAR(signedAreaMm2(polylinePath({{0, 0}, {100, 0}, {100, 50}, {0, 50}, {0, 0}})), 5000,
                1e-9);
    EXPECT_NEAR(signedAreaMm2(polylinePath({{0, 0}, {0, 50}, {100, 50}, {100, 0}})), -5000, 1e-9);
    // Between y = x^2 and its chord from (0,0) to (1,1): 1/2 - 1/3.
    EXPECT_NEAR(signedAreaMm2(Path{{parabola(1, 0, 1)}}), 1.0 / 6, 1e-15);
    EXPECT_EQ(signedAreaMm2(Path{}), 0);
}

TEST(Path, areaDoesNotSufferFarFromTheOrigin) {
    const Path far = placed(Path{{parabola(1, 0, 1)}}, {0, {1e5, -1e5}, false});
    EXPECT_NEAR(signedAreaMm2(far), 1.0 / 6, 1e-10);
}

TEST(Path, areaAgreesWithDensePolygons) {
    RandomCurves random(71);
    for (int i = 0; i < 50; ++i) {
        const Path path = random.path(2, 300);
        double twice = 0;
        Point before = path.start();
        for (const Cubic& c : path.pieces) {
            for (int k = 1; k <= 4000; ++k) {
                const Point here = pointAt(c, k / 4000.0);
                twice += crossProduct(before - path.start(), here - path.start());
                before = here;
            }
        }
        // Each chord cuts off about h^3 |z' x z''| / 12: in all below 0.01 mm2 here.
        EXPECT_NEAR(signedAreaMm2(path), twice / 2, 0.02) << written(path);
    }
}

TEST(Path, circleOfCubicsIsNearlyACircle) {
    const Path circle = wholeCircle({30, 40}, 50);
    EXPECT_EQ(circle.start(), circle.end());
    // Four times the quarter circle of the table of checks, 1.5710166981.
    EXPECT_NEAR(lengthMm(circle), 4 * 50 * 1.5710166981, 1e-7);
    const Box box = boundsOf(circle);
    EXPECT_NEAR(box.widthMm(), 100, 1e-9);
    EXPECT_NEAR(box.heightMm(), 100, 1e-9);
    EXPECT_GT(signedAreaMm2(circle), std::numbers::pi * 2500);
    EXPECT_LT(signedAreaMm2(circle), std::numbers::pi * 2500 * (1 + 2 * 2.7253e-4));
}

TEST(Path, placementMirrorsFirstThenTurnsThenShifts) {
    const Placement placement{std::numbers::pi / 2, {100, 200}, true};
    // (3, 1) mirrored in the y axis is (-3, 1), turned a quarter left (-1, -3).
    EXPECT_LT((placed(Point(3, 1), placement) - Point(99, 197)).norm(), 1e-12);
}

TEST(Path, placementKeepsLengthAndTurnsAreaWithTheMirror) {
    RandomCurves random(72);
    for (int i = 0; i < 100; ++i) {
        const Path path = random.path(3, 600);
        const Placement placement{random.number(-7, 7), random.point(1000), i % 2 == 1};
        const Path moved = placed(path, placement);
        EXPECT_NEAR(lengthMm(moved), lengthMm(path), 1e-8);
        EXPECT_NEAR(signedAreaMm2(moved), (i % 2 == 1 ? -1 : 1) * signedAreaMm2(path), 1e-6);
        const PathPosition at{1, random.number(0, 1)};
        EXPECT_LT((pointAt(moved, at) - placed(pointAt(path, at), placement)).norm(), 1e-9);
        EXPECT_NEAR(curvaturePerMmAt(moved, at) * (i % 2 == 1 ? -1 : 1), curvaturePerMmAt(path, at),
                    1e-6 * (1 + std::abs(curvaturePerMmAt(path, at))));
    }
}

TEST(Path, reversedTwiceIsTheSame) {
    RandomCurves random(73);
    const Path path = random.path(5, 600);
    const Path back = reversed(path);
    EXPECT_EQ(back.start(), path.end());
    EXPECT_EQ(back.end(), path.start());
    EXPECT_EQ(reversed(back), path);
    EXPECT_NEAR(signedAreaMm2(back), -signedAreaMm2(path), 1e-6);
    EXPECT_LT((tangentAt(back, {0, 0.3}) + tangentAt(path, {4, 0.7})).norm(), 1e-12);
}

TEST(Path, joinedClosesARoundingGap) {
    const Path first = straightPath({0, 0}, {10, 0.1 + 0.2});
    const Path second = straightPath({10, 0.3}, {20, 0});
    const Path whole = joined(first, second);
    ASSERT_EQ(whole.pieces.size(), 2U);
    EXPECT_EQ(whole.pieces[0].p3, whole.pieces[1].p0);
    EXPECT_EQ(joined(Path{}, first), first);
    EXPECT_EQ(joined(first, Path{}), first);
}

TEST(Path, polylineOfFewPoints) {
    EXPECT_TRUE(polylinePath({}).isEmpty());
    EXPECT_TRUE(polylinePath({{1, 1}}).isEmpty());
    EXPECT_TRUE(boundsOf(Path{}).isEmpty());
}

}  // namespace
}  // namespace coutil
