// Straight panels: the girth is the same at every height, and reckoned by hand.
#include "core/comparison/girth_chart.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "tests/core/pattern/two_panels.h"

namespace coutil {
namespace {

TEST(GirthChart, straightPanelsHaveOneGirthOverAllHeights) {
    const auto pattern = samples::twoPanels();
    const auto chart = girthChart(pattern, pattern, 10);
    ASSERT_EQ(chart.girths.size(), 21U);
    EXPECT_EQ(chart.girths.front().heightMm, -80);
    EXPECT_EQ(chart.girths.back().heightMm, 120);
    for (const auto& at : chart.girths) {
        EXPECT_NEAR(*at.aMm, 450, 1e-9) << at.heightMm;
        EXPECT_EQ(at.aMm, at.bMm);
    }
    ASSERT_EQ(chart.body.size(), 1U);
    EXPECT_EQ(chart.body[0].girthMm, 460);
}

TEST(GirthChart, leaningEdgeWidensEvenly) {
    auto wider = samples::twoPanels();
    auto& edges = wider.panels[1].edges;
    edges[1].path = straightPath({100, -80}, {120, 120});  // 1 in 10
    edges[2].path = straightPath({120, 120}, {0, 120});
    const auto chart = girthChart(samples::twoPanels(), wider, 20);
    for (const auto& at : chart.girths)
        EXPECT_NEAR(*at.bMm - *at.aMm, 2 * (at.heightMm + 80) / 10, 1e-9) << at.heightMm;
}

TEST(GirthChart, onlyHeightsThatAllPanelsReach) {
    auto shorter = samples::twoPanels();
    shorter.panels[1].edges[1].path = straightPath({100, -80}, {100, 100});
    shorter.panels[1].edges[2].path = straightPath({100, 100}, {0, 120});
    const auto chart = girthChart(samples::twoPanels(), shorter, 10);
    const auto high = std::ranges::find(chart.girths, 110.0, &GirthAt::heightMm);
    ASSERT_NE(high, chart.girths.end());
    EXPECT_TRUE(high->aMm);
    EXPECT_FALSE(high->bMm);
}

TEST(GirthChart, lacingGapRunsEvenlyFromLevelToLevel) {
    auto pattern = samples::twoPanels();
    pattern.levels.insert(
        pattern.levels.begin(),
        {.name = "bust", .heightMm = 100, .bodyMm = 480, .targetMm = 480, .lacingGapMm = 70});
    const auto chart = girthChart(pattern, pattern, 10);
    for (const auto& at : chart.girths) {
        const double gapMm = 50 + 20 * std::clamp(at.heightMm / 100, 0.0, 1.0);
        EXPECT_NEAR(*at.aMm, 400 + gapMm, 1e-9) << at.heightMm;
    }
}

}  // namespace
}  // namespace coutil
