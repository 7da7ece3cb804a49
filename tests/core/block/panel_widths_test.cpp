#include "core/block/panel_widths.h"

#include <numeric>

#include <gtest/gtest.h>

#include "tests/core/block/sample_bodies.h"

namespace coutil {
namespace {

Style withPanels(int count) {
    Style style;
    style.panelsPerHalf = count;
    return style;
}

double sumOf(const PanelWidths& widths) {
    return std::accumulate(widths.widthMm.begin(), widths.widthMm.end(), 0.0);
}

TEST(PanelWidths, sumToTheReferenceWidth) {
    for (int count = 4; count <= 7; ++count) {
        const auto widths = panelWidths(samples::average(), withPanels(count), 448.5, 947);
        EXPECT_EQ(widths.widthMm.size(), static_cast<std::size_t>(count));
        EXPECT_NEAR(sumOf(widths), 448.5, 1e-9);
    }
}

TEST(PanelWidths, firstSeamPassesOverTheBustPoint) {
    for (int count = 4; count <= 7; ++count) {
        const auto widths = panelWidths(samples::average(), withPanels(count), 448.5, 947);
        EXPECT_EQ(widths.seamAtMm(0), 190.0 / 2);
    }
}

TEST(PanelWidths, sideLineFromTheStyleOrTheMeasuredArc) {
    Body body = samples::average();
    EXPECT_NEAR(panelWidths(body, withPanels(6), 448.5, 947).sideLineMm, 0.55 * 448.5, 1e-9);
    // Six panels: the side line is the seam between 3 and 4.
    const auto six = panelWidths(body, withPanels(6), 448.5, 947);
    EXPECT_NEAR(six.seamAtMm(2), six.sideLineMm, 1e-9);
    EXPECT_EQ(six.sideSeam(), 2U);
    // A measured arc of 520 mm: half of it lies in front, with its part of 40 mm of ease.
    body.valuesMm[Measurement::frontBustArc] = 520;
    EXPECT_NEAR(panelWidths(body, withPanels(5), 468.5, 987).sideLineMm, 260.0 * 987 / 947, 1e-9);
}

TEST(PanelWidths, panelsBehindTheFirstAreNearlyEven) {
    for (int count = 4; count <= 7; ++count) {
        const auto widths = panelWidths(samples::average(), withPanels(count), 448.5, 947);
        const auto [least, most] =
            std::minmax_element(widths.widthMm.begin() + 1, widths.widthMm.end());
        EXPECT_LT(*most / *least, 1.2) << count;
    }
}

TEST(PanelWidths, sharesScaleThePanelsInFrontAndBehind) {
    Style style = withPanels(6);
    style.panelShares = {1, 2, 1, 1, 1, 2};
    const auto widths = panelWidths(samples::average(), style, 448.5, 947);
    EXPECT_NEAR(widths.widthMm[1], 2 * widths.widthMm[2], 1e-9);
    EXPECT_NEAR(widths.widthMm[5], 2 * widths.widthMm[4], 1e-9);
    EXPECT_NEAR(sumOf(widths), 448.5, 1e-9);
    EXPECT_NEAR(widths.seamAtMm(2), widths.sideLineMm, 1e-9);
}

TEST(PanelWidths, withoutBustPointWidthAShareDecides) {
    Body body = samples::average();
    body.valuesMm.erase(Measurement::bustPointWidth);
    Style style = withPanels(4);
    EXPECT_NEAR(panelWidths(body, style, 400, 850).widthMm[0], 0.21 * 400, 1e-9);
    style.panelShares = {1, 1, 1, 2};
    EXPECT_NEAR(panelWidths(body, style, 400, 850).widthMm[0], 80, 1e-9);
}

}  // namespace
}  // namespace coutil
