// What a maker asks of a seam drawn with a batten, tried on many invented levels and values.
#include <algorithm>
#include <cmath>
#include <random>
#include <vector>

#include <gtest/gtest.h>

#include "core/block/suppression_curve.h"

namespace coutil {
namespace {

struct Levels {
    std::vector<double> heightsMm;
    std::vector<double> valuesMm;
};

// Numbers straight from the generator: the same on every machine.
class Invented {
  public:
    double between(double lowest, double highest) {
        return lowest + (highest - lowest) * (static_cast<double>(generator_()) / 4294967296.0);
    }
    // Levels and take-out as bodies have them: hip, high hip, waist, under-bust, bust, armpit.
    Levels corset() {
        const double highHip = -between(70, 120);
        const double hip = highHip - between(70, 140);
        const double underBust = between(45, 100);
        const double bust = underBust + between(35, 80);
        return {{hip, highHip, 0, underBust, bust, bust + between(25, 80)},
                {between(-30, 10), between(-10, 20), between(5, 45), between(5, 50), 0,
                 between(-3, 15)}};
    }
    Levels wild() {
        Levels levels;
        double heightMm = -between(60, 300);
        const int count = 2 + static_cast<int>(between(0, 6));
        for (int i = 0; i < count; ++i) {
            levels.heightsMm.push_back(heightMm);
            heightMm += between(10, 250);
            const bool isLikeBelow = i > 0 && between(0, 1) < 0.15;
            levels.valuesMm.push_back(isLikeBelow ? levels.valuesMm.back() : between(-60, 60));
        }
        return levels;
    }

  private:
    std::mt19937 generator_{20100101};
};

SuppressionCurve curveOf(const Levels& levels) {
    return FairCurveSolver(levels.heightsMm).through(levels.valuesMm);
}

// Second derivatives at both ends of every piece, from values and slopes.
std::vector<double> bendsOf(const SuppressionCurve& curve) {
    std::vector<double> bends;
    for (std::size_t k = 0; k + 1 < curve.knots.size(); ++k) {
        const auto& a = curve.knots[k];
        const auto& b = curve.knots[k + 1];
        const double h = b.heightMm - a.heightMm;
        const double mean = 6 * (b.valueMm - a.valueMm) / (h * h);
        bends.push_back(mean - (4 * a.slope + 2 * b.slope) / h);
        bends.push_back(-mean + (2 * a.slope + 4 * b.slope) / h);
    }
    return bends;
}

int signChanges(const std::vector<double>& values, double noise) {
    int changes = 0;
    double last = 0;
    for (const double value : values) {
        if (std::abs(value) <= noise) continue;
        if (value * last < 0) ++changes;
        last = value;
    }
    return changes;
}

// How often the bend must change sign at least: the slope has to rise and fall as the secants do,
// from upright below the lowest level on. Where the curve turns its slope is 0, so in the intervals
// beside it the slope must exceed the secant somewhere: `steeper` times.
int signChangesAskedFor(const Levels& levels, double steeper) {
    std::vector<double> secants;
    for (std::size_t i = 0; i + 1 < levels.valuesMm.size(); ++i)
        secants.push_back((levels.valuesMm[i + 1] - levels.valuesMm[i]) /
                          (levels.heightsMm[i + 1] - levels.heightsMm[i]));
    std::vector<double> slopes = secants;
    for (std::size_t i = 0; i + 1 < secants.size(); ++i) {
        if (secants[i] * secants[i + 1] >= 0) continue;
        slopes[i] *= steeper;
        slopes[i + 1] *= steeper;
    }
    std::vector<double> changes{slopes.front()};
    for (std::size_t i = 1; i < slopes.size(); ++i) changes.push_back(slopes[i] - slopes[i - 1]);
    return signChanges(changes, 1e-12);
}

double overshootMm(const Levels& levels, const SuppressionCurve& curve) {
    double worst = 0;
    for (std::size_t i = 0; i + 1 < levels.valuesMm.size(); ++i) {
        const auto [lowest, highest] = std::minmax(levels.valuesMm[i], levels.valuesMm[i + 1]);
        for (int step = 0; step <= 60; ++step) {
            const double y =
                levels.heightsMm[i] + (levels.heightsMm[i + 1] - levels.heightsMm[i]) * step / 60;
            const double value = curve.valueMmAt(y);
            worst = std::max({worst, lowest - value, value - highest});
        }
    }
    return worst;
}

TEST(FairCurve, passesThroughEveryLevel) {
    Invented invented;
    for (int i = 0; i < 300; ++i) {
        const Levels levels = i % 2 == 0 ? invented.corset() : invented.wild();
        const auto curve = curveOf(levels);
        for (std::size_t l = 0; l < levels.heightsMm.size(); ++l)
            EXPECT_NEAR(curve.valueMmAt(levels.heightsMm[l]), levels.valuesMm[l], 1e-9) << i;
    }
}

TEST(FairCurve, neverOvershootsBetweenLevels) {
    Invented invented;
    for (int i = 0; i < 1500; ++i) {
        const Levels levels = i % 2 == 0 ? invented.corset() : invented.wild();
        EXPECT_LT(overshootMm(levels, curveOf(levels)), 1e-3) << i;  // a hundredth of a pencil line
    }
}

// To a curvature of 1e-7 per mm, a radius of 10 km.
TEST(FairCurve, isContinuousInCurvature) {
    Invented invented;
    for (int i = 0; i < 500; ++i) {
        const auto bends = bendsOf(curveOf(invented.corset()));
        EXPECT_NEAR(bends.front(), 0, 1e-7);  // runs out straight at both ends
        EXPECT_NEAR(bends.back(), 0, 1e-7);
        for (std::size_t k = 1; k + 1 < bends.size(); k += 2)
            EXPECT_NEAR(bends[k], bends[k + 1], 1e-7) << i;
    }
}

TEST(FairCurve, hasOneSwellingPerHollow) {
    Invented invented;
    int beyondSecants = 0;
    constexpr int kTries = 2000;
    for (int i = 0; i < kTries; ++i) {
        const Levels levels = invented.corset();
        const int changes = signChanges(bendsOf(curveOf(levels)), 1e-7);
        const int bySecants = signChangesAskedFor(levels, 1);
        EXPECT_LE(changes, std::max(bySecants, signChangesAskedFor(levels, 1.25))) << i;
        if (changes > bySecants) ++beyondSecants;
    }
    EXPECT_LT(beyondSecants, kTries / 100);  // needed only where secants beside a turn are alike
}

TEST(FairCurve, smoothestOfAllSuchCurves) {
    // Moving any inner knot's value off the curve, the rest redrawn through it, only roughens it.
    Invented invented;
    const Levels levels{{-218, -100, 0, 65, 130, 180}, {-18, 8, 32, 19, 0, 1}};
    const auto roughness = [](const SuppressionCurve& curve) {
        const auto bends = bendsOf(curve);
        double sum = 0;
        for (std::size_t k = 0; k + 1 < curve.knots.size(); ++k) {
            const double h = curve.knots[k + 1].heightMm - curve.knots[k].heightMm;
            const double jump = bends[2 * k + 1] - bends[2 * k];
            sum += jump * jump / h;
        }
        return sum;
    };
    const auto fair = curveOf(levels);
    for (int i = 0; i < 20; ++i) {
        Levels more = levels;
        const double y = invented.between(15, 50);
        const double value = fair.valueMmAt(y) + (i % 2 == 0 ? 0.4 : -0.4);
        more.heightsMm.insert(more.heightsMm.begin() + 3, y);
        more.valuesMm.insert(more.valuesMm.begin() + 3, value);
        EXPECT_GT(roughness(curveOf(more)), roughness(fair) * 1.001) << i;
    }
}

TEST(FairCurve, sameValueOnTwoLevelsStaysThere) {
    const auto curve = curveOf({{-200, -100, 0, 70, 130}, {-20, 15, 15, 30, 0}});
    for (double y = -100; y <= 0; y += 5) EXPECT_NEAR(curve.valueMmAt(y), 15, 1e-9);
}

TEST(FairCurve, nothingTakenOutIsAStraightLine) {
    const auto curve = curveOf({{-200, 0, 130}, {0, 0, 0}});
    for (const auto& knot : curve.knots) {
        EXPECT_EQ(knot.valueMm, 0);
        EXPECT_EQ(knot.slope, 0);
    }
}

TEST(FairCurve, standsUprightBelowTheLowestLevel) {
    const auto curve = curveOf({{-218, -100, 0, 65, 130, 180}, {-18, 8, 32, 19, 0, 1}});
    EXPECT_EQ(curve.knots.front().slope, 0);
    EXPECT_EQ(curve.valueMmAt(-400), curve.knots.front().valueMm);
    // On the way there it follows its own direction, it does not turn back in.
    EXPECT_LE(curve.valueMmAt(-250), -18);
}

// Heights and values no body has: a plain monotone curve is still an answer.
TEST(FairCurve, wildLevelsStillGiveAMonotoneCurve) {
    const Levels levels{{-183, -168.5, -153.8, 59.9, 71.7, 207.7},
                        {-1.887, -1.887, -39.099, -51.424, 48.532, -0.175}};
    const auto curve = curveOf(levels);
    EXPECT_LT(overshootMm(levels, curve), 1e-3);
    for (const auto& knot : curve.knots) EXPECT_LT(std::abs(knot.valueMm), 60);
}

}  // namespace
}  // namespace coutil
