#include "core/alterations/amount_curve.h"

#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>

namespace coutil {
namespace {

TEST(AmountCurve, goesThroughEveryReadingAndFadesToNothing) {
    const AmountCurve curve({{0, 10}, {80, 4}}, {60}, {40});
    EXPECT_DOUBLE_EQ(curve.at(0), 10);
    EXPECT_DOUBLE_EQ(curve.at(80), 4);
    EXPECT_EQ(curve.at(140), 0);
    EXPECT_EQ(curve.at(500), 0);
    EXPECT_EQ(curve.at(-40), 0);
    EXPECT_GT(curve.at(-39), 0);
    EXPECT_GT(curve.at(139), 0);
    EXPECT_EQ(curve.lowestMm(), -40);
    EXPECT_EQ(curve.highestMm(), 140);
}

TEST(AmountCurve, isCarriedOnWithoutFade) {
    const AmountCurve curve({{0, 10}, {80, 4}}, {std::nullopt}, {40});
    EXPECT_DOUBLE_EQ(curve.at(1000), 4);
    EXPECT_TRUE(std::isinf(curve.highestMm()));
}

TEST(AmountCurve, readingsAtOnePositionAdd) {
    const AmountCurve curve({{20, 6}, {0, 1}, {20, 5}}, {}, {});
    EXPECT_DOUBLE_EQ(curve.at(20), 11);
    EXPECT_DOUBLE_EQ(curve.at(0), 1);
}

TEST(AmountCurve, isMonotoneBetweenReadingsAndNeverOvershoots) {
    const std::vector<AmountAt> readings{{-90, -3}, {-40, 8}, {0, 9}, {5, 2}, {70, 2}, {90, 12}};
    const AmountCurve curve(readings, {60}, {60});
    for (std::size_t i = 0; i + 1 < curve.knots().size(); ++i) {
        const AmountAt& a = curve.knots()[i];
        const AmountAt& b = curve.knots()[i + 1];
        const double sign = b.amountMm >= a.amountMm ? 1 : -1;
        double last = a.amountMm;
        for (int k = 1; k <= 200; ++k) {
            const double s = a.positionMm + (b.positionMm - a.positionMm) * k / 200;
            EXPECT_GE(sign * (curve.at(s) - last), -1e-12) << s;
            last = curve.at(s);
        }
    }
}

TEST(AmountCurve, slopeIsTheDerivativeAndContinuous) {
    const AmountCurve curve({{-40, 8}, {0, 9}, {5, 2}}, {60}, {60});
    for (double s = -120; s < 90; s += 0.37) {
        constexpr double kStep = 1e-5;
        const double measured = (curve.at(s + kStep) - curve.at(s - kStep)) / (2 * kStep);
        EXPECT_NEAR(curve.slopeAt(s), measured, 1e-4) << s;
    }
}

TEST(EdgeShift, anAmountAndItsOppositeLeaveNothing) {
    EdgeShift shift;
    shift.add(0.5, AmountCurve({{0, 10}, {30, 4}}, {60}, {60}));
    shift.add(0.5, AmountCurve({{50, 3}}, {60}, {60}));
    shift.add(0.5, AmountCurve({{0, -10}, {30, -4}}, {60}, {60}));
    EXPECT_FALSE(shift.isNothing());
    EXPECT_DOUBLE_EQ(shift.at(50), 1.5);
    shift.add(0.5, AmountCurve({{50, -3}}, {60}, {60}));
    EXPECT_TRUE(shift.isNothing());
}

}  // namespace
}  // namespace coutil
