#include "core/block/monotone_line.h"

#include <gtest/gtest.h>

namespace coutil {
namespace {

TEST(MonotoneLine, passesThroughItsPointsAndNeverOvershoots) {
    MonotoneLine line;
    line.add(100, 40);
    line.add(0, 10);
    line.add(250, 45);
    line.add(400, -5);
    double before = 10;
    for (double x = 0; x <= 250; x += 0.5) {
        const double y = line.at(x, LineEnd::level, LineEnd::level).y;
        EXPECT_GE(y, before - 1e-12);
        before = y;
    }
    EXPECT_NEAR(line.at(100, LineEnd::level, LineEnd::level).y, 40, 1e-12);
    EXPECT_NEAR(line.at(250, LineEnd::level, LineEnd::level).slope, 0, 1e-12);
    EXPECT_NEAR(line.at(400, LineEnd::level, LineEnd::level).y, -5, 1e-12);
}

TEST(MonotoneLine, slopeIsTheDerivative) {
    MonotoneLine line;
    line.add(0, 0);
    line.add(80, 30);
    line.add(200, 36);
    for (double x = 1; x < 200; x += 7) {
        const auto at = [&](double where) {
            return line.at(where, LineEnd::pointed, LineEnd::level);
        };
        EXPECT_NEAR(at(x).slope, (at(x + 1e-4).y - at(x - 1e-4).y) / 2e-4, 1e-6) << x;
    }
}

TEST(MonotoneLine, pointedEndIsSteepAndLevelEndIsNot) {
    MonotoneLine line;
    line.add(0, -110);
    line.add(200, -70);
    EXPECT_GT(line.at(0, LineEnd::pointed, LineEnd::level).slope, 0.4);
    EXPECT_EQ(line.at(0, LineEnd::level, LineEnd::level).slope, 0);
    EXPECT_NEAR(line.straightValueAt(50), -100, 1e-12);
}

TEST(MonotoneLine, secondPointAtOnePlaceWins) {
    MonotoneLine line;
    line.add(10, 1);
    line.add(10, 2);
    EXPECT_EQ(line.straightValueAt(10), 2);
}

}  // namespace
}  // namespace coutil
