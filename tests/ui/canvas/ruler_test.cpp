#include "ui/canvas/ruler.h"

#include <cmath>

#include <gtest/gtest.h>

namespace coutil {
namespace {

bool isWhole(double value) { return std::abs(value - std::round(value)) < 1e-9; }

TEST(Ruler, metricFiguresAreOneTwoFiveTimesTen) {
    for (double px = 0.05; px < 60; px *= 1.07) {
        const RulerSteps steps = rulerSteps(LengthUnit::centimetre, px);
        const double decade = std::pow(10, std::floor(std::log10(steps.labelMm) + 1e-9));
        const double leading = steps.labelMm / decade;
        EXPECT_TRUE(std::abs(leading - 1) < 1e-9 || std::abs(leading - 2) < 1e-9 ||
                    std::abs(leading - 5) < 1e-9)
            << px << " px a mm gives " << steps.labelMm;
    }
}

TEST(Ruler, inchFiguresAreWholeInchesOrHalvings) {
    for (double px = 0.05; px < 60; px *= 1.07) {
        const RulerSteps steps = rulerSteps(LengthUnit::inch, px);
        const double inches = steps.labelMm / 25.4;  // 1 in = 25.4 mm exactly
        EXPECT_TRUE(isWhole(inches) || isWhole(std::log2(inches))) << inches;
        EXPECT_TRUE(isWhole(steps.tickMm / 25.4 * 16)) << "no tick finer than 1/16 in";
    }
}

TEST(Ruler, figuresKeepApartAndTicksDivideThem) {
    for (const LengthUnit unit : {LengthUnit::centimetre, LengthUnit::inch}) {
        for (double px = 0.05; px < 60; px *= 1.07) {
            const RulerSteps steps = rulerSteps(unit, px);
            EXPECT_GE(steps.labelMm * px, 46) << px;
            EXPECT_GE(steps.tickMm * px, 5) << px;
            EXPECT_TRUE(isWhole(steps.labelMm / steps.tickMm));
        }
    }
}

TEST(Ruler, atOrdinaryZoomAnInchHasSixteenths) {
    // 8 px a mm: an inch is 203 px wide.
    const RulerSteps steps = rulerSteps(LengthUnit::inch, 8);
    EXPECT_DOUBLE_EQ(steps.tickMm, 25.4 / 16);
}

}  // namespace
}  // namespace coutil
