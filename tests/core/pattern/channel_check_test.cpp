// A channel in a seam's own allowance: chord error under 3 mm in any 100 mm, or radius over 250 mm
// (checks.md "Trade figures": common practice, no source). Circles are the closed form: a chord of
// length c leaves its circle by r - sqrt(r^2 - c^2 / 4); over an arc of 100 mm by
// r (1 - cos(50 / r)).
#include <cmath>

#include <gtest/gtest.h>

#include "core/pattern/every_check.h"
#include "tests/core/geometry/known_curves.h"
#include "tests/core/pattern/two_panels.h"

namespace coutil {
namespace {

// Two panels whose common seam is an arc of so many mm with a radius.
Pattern withArc(double radiusMm, double arcMm) {
    const double half = arcMm / radiusMm / 2;
    Path arc{{testing::arcCubic(radiusMm, -half, 0)}};
    arc = joined(arc, Path{{testing::arcCubic(radiusMm, 0, half)}});
    arc = placed(arc, Placement{.shift = Vector(100 - radiusMm, 0)});
    Pattern pattern = samples::twoPanels();
    auto& front = pattern.panels[0].edges[1];
    front.path = arc;
    front.waistMarkAtMm = arcMm / 2;
    auto& back = pattern.panels[1].edges[3];
    back.path = reversed(placed(arc, Placement{.shift = Vector(-100, 0)}));
    back.waistMarkAtMm = arcMm / 2;
    return pattern;
}

double chordErrorMm(double radiusMm, double arcMm) {
    return radiusMm * (1 - std::cos(arcMm / radiusMm / 2));
}

TEST(ChannelCheck, straightSeamsCarryTheirChannel) {
    EXPECT_TRUE(checkChannels(samples::twoPanels()).empty());
}

TEST(ChannelCheck, circlesUpToARadiusOf250AreTooCurved) {
    for (const double radiusMm : {80.0, 150.0, 240.0, 249.0}) {
        const auto problems = checkChannels(withArc(radiusMm, 200));
        ASSERT_EQ(problems.size(), 1U) << radiusMm;
        EXPECT_EQ(problems[0].severity, Severity::note);
        EXPECT_EQ(problems[0].subject, "1-2");
        EXPECT_EQ(problems[0].figures[0].name, "value");
        EXPECT_NEAR(problems[0].figures[0].value, chordErrorMm(radiusMm, 100), 0.02) << radiusMm;
        EXPECT_NEAR(problems[0].figures[2].value, radiusMm, 0.01 * radiusMm);
    }
    for (const double radiusMm : {252.0, 400.0, 2000.0})
        EXPECT_TRUE(checkChannels(withArc(radiusMm, 200)).empty()) << radiusMm;
}

// A short bend that leaves the straight by less than 3 mm can be sewn however tight it is.
TEST(ChannelCheck, aSmallBendInAStraightSeamIsNone) {
    for (const double heightMm : {2.0, 2.9, 3.2, 5.0}) {
        const double reachMm = 30;
        Path seam = straightPath({0, 0}, {85 - reachMm, 0});
        // 2 h x^2 up to half the reach and back is a bump of height h with no corner.
        const auto arch = [&](double a, double from, double to) {
            return Path{{testing::parabola(a, from, to)}};
        };
        const double a = 2 * heightMm / (reachMm * reachMm);
        const auto put = [&](const Path& path, double x, double y) {
            seam = joined(seam, placed(path, Placement{.shift = Vector(x, y)}));
        };
        put(arch(a, 0, reachMm / 2), 85 - reachMm, 0);
        put(arch(-a, -reachMm / 2, reachMm / 2), 85, heightMm);
        put(arch(a, -reachMm / 2, 0), 85 + reachMm, 0);
        seam = joined(seam, straightPath({85 + reachMm, 0}, {200, 0}));
        Pattern pattern = samples::twoPanels();
        pattern.panels[0].edges[1].path = seam;
        pattern.panels[0].edges[1].waistMarkAtMm.reset();
        const auto problems = checkChannels(pattern);
        ASSERT_EQ(problems.empty(), heightMm < 3) << heightMm;
        if (!problems.empty()) {
            EXPECT_NEAR(problems[0].at->x(), 85, 2);
            EXPECT_NEAR(problems[0].figures[0].value, heightMm, 0.02);
        }
    }
}

// An edge shorter than 100 mm is looked at as a whole.
TEST(ChannelCheck, shortSeamsAreLookedAtWhole) {
    EXPECT_EQ(checkChannels(withArc(60, 50)).size(), 1U);  // 5.1 mm off its chord (computed)
    EXPECT_NEAR(chordErrorMm(60, 50), 5.14, 0.01);
    EXPECT_TRUE(checkChannels(withArc(60, 30)).empty());  // 1.9 mm
}

}  // namespace
}  // namespace coutil
