// Notches: the same place of both edges of a seam, and never the same upside down.
#include "core/tracing/notches.h"

#include <cmath>

#include <gmock/gmock.h>

#include "tests/core/tracing/plain_pattern.h"

namespace coutil {
namespace {

std::vector<Notch> on(const std::string& edge, const std::vector<Notch>& notches) {
    std::vector<Notch> found;
    for (const Notch& notch : notches) {
        if (notch.edge == edge) found.push_back(notch);
    }
    return found;
}

TEST(Notches, ofThePlainPattern) {
    const auto tracings = traceTracings(samples::plainPattern(), {});
    ASSERT_TRUE(tracings.hasValue());
    const auto front = on("seam 1-2", tracings->at(0).notches);
    const auto back = on("seam 1-2", tracings->at(1).notches);
    ASSERT_EQ(front.size(), 2U);
    ASSERT_EQ(back.size(), 2U);
    EXPECT_EQ(front[0].kind, NotchKind::waist);
    EXPECT_LT((front[0].at - Point(100, 0)).norm(), 1e-6);
    EXPECT_LT((front[0].outward - Vector(1, 0)).norm(), 1e-12);
    EXPECT_NEAR(front[0].lengthMm, 10, 0.01);
    EXPECT_EQ(front[1].kind, NotchKind::balance);
    EXPECT_DOUBLE_EQ(front[1].positionMm, back[1].positionMm);
    EXPECT_NEAR(front[1].at.y(), front[1].positionMm, 1e-6);
    EXPECT_NEAR(back[1].at.y(), back[1].positionMm, 1e-6);
    EXPECT_LT((back[0].outward - Vector(-1, 0)).norm(), 1e-12);
    // The opening has its waist notch as long as its own allowance, the fold none.
    const auto opening = on("centre back", tracings->at(1).notches);
    ASSERT_EQ(opening.size(), 1U);
    EXPECT_EQ(opening[0].kind, NotchKind::waist);
    EXPECT_NEAR(opening[0].lengthMm, 15, 0.01);
    EXPECT_TRUE(on("centre front", tracings->at(0).notches).empty());
}

TEST(Notches, withoutAllowanceTheTickHasNoLength) {
    AllowanceStyle style;
    style.byEdgeMm = {{"1/seam 1-2", 0}};
    const auto tracings = traceTracings(samples::plainPattern(), style);
    ASSERT_TRUE(tracings.hasValue());
    for (const Notch& notch : on("seam 1-2", tracings->at(0).notches)) {
        EXPECT_EQ(notch.lengthMm, 0);
    }
}

TEST(Notches, balanceFortyAboveTheWaistWhereThereIsRoom) {
    EXPECT_EQ(balancePositionMm({200, 150}, {200, 150}), 40);
    EXPECT_EQ(balancePositionMm({200, 150}, {45, 150}), 25) << "the shorter edge decides";
    EXPECT_EQ(balancePositionMm({20, 150}, {20, 150}), -40) << "too little above";
    EXPECT_EQ(balancePositionMm({10, 10}, {10, 10}), std::nullopt);
}

// Every pair of lengths a corset can have: wherever the balance notch falls, the edge turned upside
// down shows its higher notch at least 8 mm elsewhere.
TEST(Notches, noEdgeLooksTheSameUpsideDown) {
    int seen = 0;
    for (double above = 20; above <= 260; above += 3) {
        for (double below = 20; below <= 260; below += 3) {
            const auto position = balancePositionMm({above, below}, {above, below});
            if (!position) continue;
            ++seen;
            const double highest = above - std::max(0.0, *position);
            const double turned = below + std::min(0.0, *position);
            EXPECT_GE(std::abs(highest - turned), kLeastUpsideDownMm) << above << " " << below;
            EXPECT_LE(*position, above - 15);
            EXPECT_GE(*position, 15 - below);
        }
    }
    EXPECT_GT(seen, 6000);
}

}  // namespace
}  // namespace coutil
