#include <algorithm>
#include <cmath>
#include <limits>

#include <gtest/gtest.h>

#include "core/geometry/path.h"
#include "tests/core/geometry/known_curves.h"
#include "tests/core/geometry/random_curves.h"

namespace coutil {
namespace {

using namespace coutil::testing;

// The smallest distance by looking everywhere: samples, then thirds around the best of them.
double bruteDistanceMm(const Path& path, const Point& point) {
    constexpr int kSamples = 2000;
    double best = std::numeric_limits<double>::infinity();
    for (const Cubic& c : path.pieces) {
        const auto distance = [&](double t) { return (pointAt(c, t) - point).norm(); };
        int at = 0;
        for (int k = 0; k <= kSamples; ++k) {
            if (distance(k / double{kSamples}) < distance(at / double{kSamples})) at = k;
        }
        double low = std::max(0.0, (at - 1) / double{kSamples});
        double high = std::min(1.0, (at + 1) / double{kSamples});
        for (int i = 0; i < 100; ++i) {
            const double third = (high - low) / 3;
            if (distance(low + third) < distance(high - third)) {
                high -= third;
            } else {
                low += third;
            }
        }
        best = std::min({best, distance((low + high) / 2), distance(0), distance(1)});
    }
    return best;
}

TEST(Closest, footOnAStraightPiece) {
    const auto found = closestOn(straightPath({0, 0}, {100, 0}), {30, 40});
    EXPECT_NEAR(found.position.t, 0.3, 1e-12);
    EXPECT_NEAR(found.distanceMm, 40, 1e-12);
    EXPECT_NEAR(closestOn(straightPath({0, 0}, {100, 0}), {-3, 4}).distanceMm, 5, 1e-12);
    EXPECT_EQ(closestOn(straightPath({0, 0}, {100, 0}), {130, 40}).position.t, 1);
}

TEST(Closest, footOnAParabola) {
    // Feet of (0, c) on y = x^2: x = 0, or x^2 = c - 1/2, distance^2 = c - 1/4.
    const Path path{{parabola(1, -2, 3)}};
    const auto found = closestOn(path, {0, 1.5});
    EXPECT_NEAR(std::abs(found.point.x()), 1, 1e-9);
    EXPECT_NEAR(found.distanceMm, std::sqrt(1.25), 1e-12);
}

TEST(Closest, agreesWithBruteForce) {
    RandomCurves random(31);
    for (int i = 0; i < 300; ++i) {
        const Path path = random.path(1 + i % 3, 300);
        const Point point = random.point(300) + Vector(random.number(-100, 100), 0);
        const auto found = closestOn(path, point);
        const double expected = bruteDistanceMm(path, point);
        EXPECT_NEAR(found.distanceMm, expected, 1e-6) << written(path) << written(point);
        EXPECT_LE(found.distanceMm, expected + 1e-9) << written(path) << written(point);
        EXPECT_EQ(found.point, pointAt(path, found.position));
        EXPECT_NEAR((found.point - point).norm(), found.distanceMm, 1e-12);
    }
}

TEST(Closest, aPointOfThePathIsItsOwn) {
    RandomCurves random(32);
    for (int i = 0; i < 300; ++i) {
        const Path path = random.path(2, 300);
        const Point point = pointAt(path, {1, random.number(0, 1)});
        EXPECT_LT(closestOn(path, point).distanceMm, 1e-6) << written(path) << written(point);
    }
}

}  // namespace
}  // namespace coutil
