#include "core/geometry/cubic.h"

#include <algorithm>
#include <numbers>

#include <gtest/gtest.h>

#include "tests/core/geometry/known_curves.h"
#include "tests/core/geometry/random_curves.h"

namespace coutil {
namespace {

using namespace coutil::testing;

void expectNear(const Point& a, const Point& b, double mm) { EXPECT_LT((a - b).norm(), mm); }

// Table of checks, computed: quarter circle as a cubic, largest radial error +2.7253e-4.
TEST(Cubic, quarterCircleStaysWithinItsKnownRadialError) {
    const Cubic c = quarterCircle(1);
    double largest = 0;
    double smallest = 0;
    for (int i = 0; i <= 100'000; ++i) {
        const double error = pointAt(c, i / 100'000.0).norm() - 1;
        largest = std::max(largest, error);
        smallest = std::min(smallest, error);
    }
    EXPECT_NEAR(largest, 2.7253e-4, 0.5e-8);
    EXPECT_NEAR(smallest, 0, 1e-15);
}

TEST(Cubic, endsAreTheControlPointsThemselves) {
    RandomCurves random(1);
    for (int i = 0; i < 200; ++i) {
        const Cubic c = random.cubic(1000);
        EXPECT_EQ(pointAt(c, 0), c.p0) << written(c);
        EXPECT_EQ(pointAt(c, 1), c.p3) << written(c);
    }
}

TEST(Cubic, straightPieceRunsAtEvenSpeed) {
    const Cubic c = straightCubic({10, 20}, {110, 70});
    for (int i = 0; i <= 10; ++i) {
        expectNear(pointAt(c, i / 10.0), Point(10 + 10.0 * i, 20 + 5.0 * i), 1e-12);
        expectNear(derivativeAt(c, i / 10.0), Vector(100, 50), 1e-11);
    }
}

TEST(Cubic, derivativesMatchDifferences) {
    RandomCurves random(2);
    for (int i = 0; i < 200; ++i) {
        const Cubic c = random.cubic(300);
        const double t = random.number(0.01, 0.99);
        constexpr double kStep = 1e-4;
        const Vector slope = (pointAt(c, t + kStep) - pointAt(c, t - kStep)) / (2 * kStep);
        // The error of a central difference of a cubic is step^2 z''' / 6, z''' up to 6 * 8 * 300.
        EXPECT_LT((slope - derivativeAt(c, t)).norm(), 3e-5) << written(c);
        const Vector second =
            (derivativeAt(c, t + kStep) - derivativeAt(c, t - kStep)) / (2 * kStep);
        EXPECT_LT((second - secondDerivativeAt(c, t)).norm(), 1e-6) << written(c);
    }
}

TEST(Cubic, tangentWhereTheDerivativeVanishes) {
    expectNear(tangentAt({{0, 0}, {0, 0}, {3, 4}, {9, 9}}, 0), {0.6, 0.8}, 1e-15);
    expectNear(tangentAt({{9, 9}, {3, 4}, {0, 0}, {0, 0}}, 1), {-0.6, -0.8}, 1e-15);
    expectNear(tangentAt({{0, 0}, {0, 0}, {0, 0}, {3, 4}}, 0), {0.6, 0.8}, 1e-15);
    expectNear(tangentAt({{0, 0}, {3, 4}, {3, 4}, {3, 4}}, 1), {0.6, 0.8}, 1e-15);
    expectNear(tangentAt({{5, 5}, {5, 5}, {5, 5}, {5, 5}}, 0.3), {1, 0}, 1e-15);
    // The cusp of (s^2, s^3) at s = 0 leaves along +x.
    expectNear(tangentAt(semicubicalParabola(-1, 1), 0.5), {1, 0}, 1e-15);
    // The limit is approached: a little way in, the tangent is nearly the same.
    const Cubic c{{0, 0}, {0, 0}, {3, 4}, {9, 9}};
    expectNear(tangentAt(c, 1e-6), tangentAt(c, 0), 1e-5);
}

TEST(Cubic, curvatureOfParabolaIsExact) {
    // y = a x^2: curvature 2 a / (1 + 4 a^2 x^2)^(3/2).
    const double a = 0.01;
    const Cubic c = parabola(a, -50, 100);
    for (int i = 0; i <= 20; ++i) {
        const double t = i / 20.0;
        const double x = pointAt(c, t).x();
        EXPECT_NEAR(curvaturePerMmAt(c, t), 2 * a / std::pow(1 + 4 * a * a * x * x, 1.5), 1e-15);
        EXPECT_NEAR(curvaturePerMmAt(reversed(c), 1 - t), -curvaturePerMmAt(c, t), 1e-15);
    }
}

TEST(Cubic, curvatureOfCircleIsOneOverTheRadius) {
    // A 30 degree arc as a cubic: the curvature error falls with the fourth power of the angle;
    // measured 3e-4 of the curvature.
    const Cubic c = arcCubic(80, 0.2, 0.2 + std::numbers::pi / 6);
    for (int i = 0; i <= 20; ++i) EXPECT_NEAR(curvaturePerMmAt(c, i / 20.0) * 80, 1, 5e-4);
}

TEST(Cubic, curvatureIsZeroWhereTheDerivativeVanishes) {
    EXPECT_EQ(curvaturePerMmAt(semicubicalParabola(-1, 1), 0.5), 0);
    EXPECT_EQ(curvaturePerMmAt({{5, 5}, {5, 5}, {5, 5}, {5, 5}}, 0.5), 0);
}

TEST(Cubic, partsLieOnTheWholeAndShareTheirPoint) {
    RandomCurves random(3);
    for (int i = 0; i < 200; ++i) {
        const Cubic c = random.cubic(500);
        const double t = random.number(0, 1);
        const auto [left, right] = splitAt(c, t);
        EXPECT_EQ(left.p3, right.p0);
        EXPECT_EQ(left.p3, pointAt(c, t));
        EXPECT_EQ(left.p0, c.p0);
        EXPECT_EQ(right.p3, c.p3);
        const double t1 = random.number(t, 1);
        const Cubic middle = between(c, t, t1);
        for (const double u : {0.1, 0.5, 0.8}) {
            EXPECT_LT((pointAt(left, u) - pointAt(c, u * t)).norm(), 1e-11) << written(c);
            EXPECT_LT((pointAt(right, u) - pointAt(c, t + u * (1 - t))).norm(), 1e-11);
            EXPECT_LT((pointAt(middle, u) - pointAt(c, t + u * (t1 - t))).norm(), 1e-11);
        }
        EXPECT_EQ(between(c, 0, 1).p1, c.p1);
        EXPECT_EQ(between(c, 0, 1).p2, c.p2);
        EXPECT_EQ(reversed(reversed(c)), c);
    }
}

TEST(Cubic, boundsAreTight) {
    RandomCurves random(4);
    for (int i = 0; i < 300; ++i) {
        const Cubic c = random.cubic(1000);
        const Box box = boundsOf(c);
        Box dense;
        for (int k = 0; k <= 2000; ++k) dense.include(pointAt(c, k / 2000.0));
        // Dense samples miss an extreme by at most step^2 / 8 max |z''|, z'' up to 6 * 4 * 1000.
        constexpr double kMiss = 24'000 / 8.0 / (2000.0 * 2000.0);
        EXPECT_LE((dense.lowest - box.lowest).maxCoeff(), kMiss) << written(c);
        EXPECT_LE((box.highest - dense.highest).maxCoeff(), kMiss) << written(c);
        EXPECT_GE((dense.lowest - box.lowest).minCoeff(), -1e-9) << written(c);
        EXPECT_GE((box.highest - dense.highest).minCoeff(), -1e-9) << written(c);
    }
    EXPECT_TRUE(Box{}.isEmpty());
    // x = 3 t (1-t)^2 * 4: extreme at t = 1/3, 16/9 (derivative 12 (1-t)(1-3t)).
    EXPECT_NEAR(boundsOf({{0, 0}, {4, 0}, {0, 3}, {0, 9}}).highest.x(), 16.0 / 9, 1e-14);
}

}  // namespace
}  // namespace coutil
