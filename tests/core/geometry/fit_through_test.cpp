#include <algorithm>
#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

#include "core/geometry/path.h"
#include "tests/core/geometry/random_curves.h"

namespace coutil {
namespace {

using namespace coutil::testing;

const Vector kFree = Vector::Zero();

std::vector<Point> quarterPoints(int count, double radiusMm) {
    std::vector<Point> points;
    for (int i = 0; i < count; ++i) {
        const double angle = std::numbers::pi / 2 * i / (count - 1);
        points.emplace_back(radiusMm * std::cos(angle), radiusMm * std::sin(angle));
    }
    return points;
}

double radialErrorMm(const Path& path, double radiusMm) {
    double worst = 0;
    for (const Cubic& c : path.pieces) {
        for (int k = 0; k <= 50; ++k) {
            worst = std::max(worst, std::abs(pointAt(c, k / 50.0).norm() - radiusMm));
        }
    }
    return worst;
}

// Curvature k s / length, by Simpson's rule in tiny steps: a clothoid.
std::vector<Point> clothoidPoints(int count, double lengthMm, double endCurvaturePerMm) {
    constexpr int kSteps = 200;
    std::vector<Point> points{{0, 0}};
    const double step = lengthMm / (count - 1) / kSteps;
    Point at(0, 0);
    const auto direction = [&](double s) {
        const double angle = endCurvaturePerMm * s * s / (2 * lengthMm);
        return Vector(std::cos(angle), std::sin(angle));
    };
    for (int i = 1; i < count; ++i) {
        for (int k = 0; k < kSteps; ++k) {
            const double s = step * ((i - 1) * kSteps + k);
            at += step / 6 * (direction(s) + 4 * direction(s + step / 2) + direction(s + step));
        }
        points.push_back(at);
    }
    return points;
}

// The error of a cubic spline falls with the fourth power of the spacing.
TEST(FittedThrough, circleErrorFallsWithTheFourthPower) {
    const auto error = [](int count) {
        return radialErrorMm(fittedThrough(quarterPoints(count, 100), {0, 1}, {-1, 0}), 100);
    };
    EXPECT_LT(error(5), 0.02);
    EXPECT_LT(error(17), 1e-4);
    EXPECT_GT(error(9) / error(17), 14);
    EXPECT_LT(error(9) / error(17), 18);
    EXPECT_LT(radialErrorMm(fittedThrough(quarterPoints(17, 100), kFree, kFree), 100), 2e-4);
}

TEST(FittedThrough, clothoidKeepsItsCurvature) {
    const double length = 300;
    const double endCurvature = 0.01;
    const Path path = fittedThrough(clothoidPoints(31, length, endCurvature), {1, 0}, kFree);
    EXPECT_NEAR(lengthMm(path), length, 1e-3);
    for (std::size_t i = 2; i + 3 < path.pieces.size(); ++i) {
        EXPECT_NEAR(curvaturePerMmAt(path, {i, 0}), endCurvature * static_cast<double>(i) / 30,
                    2e-5);
    }
}

TEST(FittedThrough, continuousInDirectionAndCurvature) {
    RandomCurves random(91);
    for (int i = 0; i < 100; ++i) {
        std::vector<Point> points;
        for (int k = 0; k < 7; ++k) points.push_back(random.point(80) + Vector(100.0 * k, 0));
        const double angle = random.number(-1, 1);
        const Vector start(std::cos(angle), std::sin(angle));
        const Path path = fittedThrough(points, start, i % 2 == 0 ? start : kFree);
        ASSERT_EQ(path.pieces.size(), 6U);
        EXPECT_LT((tangentAt(path, {0, 0}) - start).norm(), 1e-12);
        for (std::size_t k = 0; k < 6; ++k) {
            EXPECT_EQ(path.pieces[k].p0, points[k]);
            EXPECT_EQ(path.pieces[k].p3, points[k + 1]);
            if (k == 0) continue;
            EXPECT_LT((tangentAt(path, {k, 0}) - tangentAt(path, {k - 1, 1})).norm(), 1e-10);
            EXPECT_NEAR(curvaturePerMmAt(path, {k, 0}), curvaturePerMmAt(path, {k - 1, 1}), 1e-9)
                << written(path);
        }
    }
}

TEST(FittedThrough, fewAndRepeatedPoints) {
    EXPECT_TRUE(fittedThrough({}, kFree, kFree).isEmpty());
    EXPECT_EQ(fittedThrough({{0, 0}, {30, 40}}, kFree, kFree), straightPath({0, 0}, {30, 40}));
    EXPECT_EQ(fittedThrough({{0, 0}, {0, 0}, {30, 40}, {30, 40}}, kFree, kFree),
              straightPath({0, 0}, {30, 40}));
    const Path leaning = fittedThrough({{0, 0}, {100, 0}}, {0, 1}, kFree);
    EXPECT_LT((tangentAt(leaning, {0, 0}) - Vector(0, 1)).norm(), 1e-12);
    // Free ends: three points give the parabola through them.
    const Path parabola = fittedThrough({{0, 0}, {3, 4}, {6, 0}}, kFree, kFree);
    EXPECT_NEAR(parabola.pieces[0].p1.y(), 8.0 / 3, 1e-12);
}

}  // namespace
}  // namespace coutil
