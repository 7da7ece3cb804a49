#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include <gtest/gtest.h>

#include "core/geometry/path.h"
#include "tests/core/geometry/known_curves.h"
#include "tests/core/geometry/random_curves.h"

namespace coutil {
namespace {

using namespace coutil::testing;

constexpr double kCornerRad = 0.3;

// The larger of: how far the fit leaves the chain, how far the chain leaves the fit.
double largestGapMm(const Path& fit, const std::vector<Point>& chain) {
    double gap = 0;
    for (const Point& p : chain) gap = std::max(gap, closestOn(fit, p).distanceMm);
    const Path polyline = polylinePath(chain);
    for (const Cubic& c : fit.pieces) {
        for (int k = 0; k <= 40; ++k) {
            gap = std::max(gap, closestOn(polyline, pointAt(c, k / 40.0)).distanceMm);
        }
    }
    return gap;
}

TEST(FittedTo, circleTakesFewPieces) {
    std::vector<Point> chain;
    for (int i = 0; i <= 360; ++i) {
        const double angle = std::numbers::pi * i / 180;
        chain.emplace_back(100 * std::cos(angle), 100 * std::sin(angle));
    }
    const Path fit = fittedTo(chain, 0.05, kCornerRad);
    // The customary quarter circles are off by 0.027 mm at this radius: four are enough.
    EXPECT_LE(fit.pieces.size(), 4U);
    EXPECT_LE(largestGapMm(fit, chain), 0.05);
    for (std::size_t i = 1; i < fit.pieces.size(); ++i) {
        EXPECT_LT((tangentAt(fit, {i, 0}) - tangentAt(fit, {i - 1, 1})).norm(), 1e-9);
    }
}

TEST(FittedTo, cornersStayCorners) {
    const std::vector<Point> square{{0, 0}, {100, 0}, {100, 100}, {0, 100}, {0, 0}};
    EXPECT_EQ(fittedTo(square, 0.01, kCornerRad), polylinePath(square));
    // A curve that ends in a corner: the corner is a joint of the fit.
    auto chain = flattened(Path{{Cubic{{0, 0}, {30, 100}, {-60, 180}, {40, 300}}}}, 0.005);
    const auto second = flattened(straightPath({40, 300}, {200, 300}), 0.005);
    chain.insert(chain.end(), second.begin(), second.end());
    const Path fit = fittedTo(chain, 0.02, kCornerRad);
    EXPECT_TRUE(std::any_of(fit.pieces.begin(), fit.pieces.end(),
                            [](const Cubic& c) { return c.p3 == Point(40, 300); }));
    EXPECT_LE(largestGapMm(fit, chain), 0.02);
    EXPECT_LE(fit.pieces.size(), 6U);
}

TEST(FittedTo, staysWithinTheToleranceOfRandomCurves) {
    RandomCurves random(95);
    for (int i = 0; i < 40; ++i) {
        const Path path = random.path(2, 300);
        const auto chain = flattened(path, 0.01);
        for (const double toleranceMm : {0.5, 0.05}) {
            const Path fit = fittedTo(chain, toleranceMm, kCornerRad);
            EXPECT_EQ(fit.start(), chain.front());
            EXPECT_EQ(fit.end(), chain.back());
            EXPECT_LE(largestGapMm(fit, chain), toleranceMm) << written(path);
            EXPECT_LT(fit.pieces.size(), 40U) << written(path);
        }
    }
}

TEST(FittedTo, noisyChainsStayWithin) {
    RandomCurves random(96);
    std::vector<Point> chain;
    for (int i = 0; i <= 200; ++i) {
        chain.emplace_back(2.0 * i + random.number(-0.02, 0.02),
                           50 * std::sin(i / 60.0) + random.number(-0.02, 0.02));
    }
    const Path fit = fittedTo(chain, 0.2, kCornerRad);
    EXPECT_LE(largestGapMm(fit, chain), 0.2);
    EXPECT_LT(fit.pieces.size(), 20U);
}

TEST(FittedTo, straightChainsAndFewPoints) {
    EXPECT_EQ(fittedTo({{0, 0}, {10, 0}, {20, 0}, {30, 0}}, 0.01, kCornerRad).pieces.size(), 1U);
    EXPECT_TRUE(fittedTo({}, 0.01, kCornerRad).isEmpty());
    EXPECT_TRUE(fittedTo({{1, 1}}, 0.01, kCornerRad).isEmpty());
    EXPECT_TRUE(fittedTo({{1, 1}, {1, 1}}, 0.01, kCornerRad).isEmpty());
    EXPECT_EQ(fittedTo({{0, 0}, {3, 4}}, 0.01, kCornerRad).pieces.size(), 1U);
}

}  // namespace
}  // namespace coutil
