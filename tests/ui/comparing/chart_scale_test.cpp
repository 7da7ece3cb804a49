#include "ui/comparing/chart_scale.h"

#include <cmath>

#include <gtest/gtest.h>

namespace coutil {
namespace {

// A cone by hand: a grows by 1 mm of girth a mm of height, b lies 20 mm under it; the body is
// known at three levels.
GirthChart cone() {
    GirthChart chart;
    for (int height = -100; height <= 200; height += 10) {
        chart.girths.push_back({double(height), 700.0 + height, 680.0 + height});
    }
    chart.girths.back().bMm.reset();  // b ends lower
    chart.body = {{"hip", -100, 640}, {"waist", 0, 740}, {"bust", 150, 890}};
    return chart;
}

TEST(ChartScale, heightsGoUpGirthsGoRightAndAllIsInside) {
    const GirthChart chart = cone();
    const QRectF area(10, 20, 300, 200);
    const ChartScale scale(chart, area);
    EXPECT_GT(scale.y(0), scale.y(100));
    EXPECT_LT(scale.x(700), scale.x(800));
    EXPECT_NEAR(scale.heightMmAt(scale.y(37)), 37, 1e-9);
    for (const auto& lines : {scale.lineOfA(chart), scale.lineOfB(chart)}) {
        ASSERT_EQ(lines.size(), 1U);
        for (const QPointF& point : lines.front()) EXPECT_TRUE(area.contains(point));
    }
    EXPECT_EQ(scale.lineOfA(chart).front().size(), 31);
    EXPECT_EQ(scale.lineOfB(chart).front().size(), 30);
    for (const QPointF& point : scale.lineOfBody(chart)) EXPECT_TRUE(area.contains(point));
}

TEST(ChartScale, aGapBreaksTheLine) {
    GirthChart chart = cone();
    chart.girths[10].aMm.reset();
    EXPECT_EQ(ChartScale(chart, {0, 0, 100, 100}).lineOfA(chart).size(), 2U);
}

TEST(ChartScale, readsBetweenTheStations) {
    const ChartReading at = readingAt(cone(), 35);
    EXPECT_DOUBLE_EQ(at.aMm.value(), 735);
    EXPECT_DOUBLE_EQ(at.bMm.value(), 715);
    EXPECT_DOUBLE_EQ(at.bodyMm.value(), 740 + 35.0);  // 1 mm a mm between waist and bust
    const ChartReading over = readingAt(cone(), 195);
    EXPECT_TRUE(over.aMm);
    EXPECT_FALSE(over.bMm);
    EXPECT_FALSE(over.bodyMm);
}

TEST(ChartScale, girthsAtTheFootAreRoundInTheUnitAndApart) {
    const ChartScale scale(cone(), {0, 0, 300, 200});
    const auto ticks = scale.girthTicksMm(LengthUnit::centimetre, 40);
    ASSERT_GE(ticks.size(), 2U);
    for (std::size_t i = 1; i < ticks.size(); ++i) {
        EXPECT_GE(scale.x(ticks[i]) - scale.x(ticks[i - 1]), 40);
        EXPECT_NEAR(std::remainder(ticks[i], 10), 0, 1e-9);
    }
}

}  // namespace
}  // namespace coutil
