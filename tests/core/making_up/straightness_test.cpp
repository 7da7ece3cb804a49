// May a seam's own allowance be its channel? Chord error under 3 mm in any 100 mm and radius over
// 250 mm (checks.md "Trade figures": common practice, no source). Circles are the closed form: over
// an arc of a mm one of radius r leaves its chord by r (1 - cos(a / 2r)).
#include <cmath>

#include <gtest/gtest.h>

#include "core/making_up/channel.h"
#include "tests/core/geometry/known_curves.h"
#include "tests/core/making_up/arc_seam.h"

namespace coutil {
namespace {

double chordErrorMm(double radiusMm, double arcMm) {
    return radiusMm * (1 - std::cos(arcMm / radiusMm / 2));
}

TEST(Straightness, aStraightSeamHasNoErrorAndNoBend) {
    const auto straight = straightnessOf(samples::twoPanels(), {});
    ASSERT_EQ(straight.size(), 1U);
    EXPECT_EQ(straight[0].seam, "1-2");
    EXPECT_NEAR(straight[0].chordErrorMm, 0, 1e-9);
    EXPECT_TRUE(std::isinf(straight[0].radiusMm));
    EXPECT_TRUE(straight[0].isNearlyStraight);
}

TEST(Straightness, circlesAreMeasuredAsTheyAre) {
    for (const double radiusMm : {90.0, 200.0, 249.0, 300.0, 416.0, 419.0, 1000.0, 5000.0}) {
        const auto found = straightnessOf(samples::withArc(radiusMm, 200), {}).at(0);
        EXPECT_NEAR(found.chordErrorMm, chordErrorMm(radiusMm, 100), 0.02) << radiusMm;
        EXPECT_NEAR(found.radiusMm, radiusMm, 0.003 * radiusMm);
        EXPECT_FALSE(found.chordErrorPanel.empty());
        EXPECT_LE(std::abs(found.chordErrorAtMm), 50.5) << radiusMm;
        // 3 mm over an arc of 100 mm: r = 416.2.
        EXPECT_EQ(found.isNearlyStraight, radiusMm > 417) << radiusMm;
    }
}

// A shorter seam is looked at whole: on an arc of 60 mm the radius decides, since below 250 mm the
// arc leaves its chord by less than 3 mm down to r = 149.
TEST(Straightness, bothLimitsDecideAndBothCanBeSet) {
    EXPECT_FALSE(straightnessOf(samples::withArc(249, 60), {}).at(0).isNearlyStraight);
    EXPECT_TRUE(straightnessOf(samples::withArc(251, 60), {}).at(0).isNearlyStraight);
    EXPECT_TRUE(
        straightnessOf(samples::withArc(200, 60), {.radiusMm = 190}).at(0).isNearlyStraight);
    EXPECT_TRUE(
        straightnessOf(samples::withArc(300, 200), {.chordErrorMm = 5}).at(0).isNearlyStraight);
    const StraightSeamRule shorter{.stretchMm = 50};
    const auto found = straightnessOf(samples::withArc(300, 200), shorter).at(0);
    EXPECT_NEAR(found.chordErrorMm, chordErrorMm(300, 50), 0.02);
}

}  // namespace
}  // namespace coutil
