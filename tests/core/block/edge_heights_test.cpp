#include "core/block/edge_heights.h"

#include <gtest/gtest.h>

#include "tests/core/block/sample_bodies.h"

namespace coutil {
namespace {

ResolvedHeights heightsOf(const Body& body, const Style& style) {
    return resolvedHeights(body, style);
}

std::vector<Body> bodies() {
    return {samples::average(), samples::largeBust(), samples::straight(), samples::petite()};
}

// Where a corset maker ends an overbust garment for a singer (common practice, no source).
TEST(EdgeHeights, defaultTopHoldsTheBustAndFreesTheArms) {
    for (const Body& body : bodies()) {
        const double bustMm = body.valueMm(Measurement::waistToBust);
        const double armpitMm = body.valueMm(Measurement::waistToArmpit);
        const auto heights = heightsOf(body, Style{});
        ASSERT_EQ(heights.topMm.size(), 6U);
        const double peakMm = heights.topMm[1];
        EXPECT_GT(peakMm, bustMm + 27);
        EXPECT_LT(peakMm, bustMm + 70);
        EXPECT_LT(heights.topMm[0], peakMm - 20);  // the dip of the sweetheart
        EXPECT_GT(heights.topMm[0], bustMm);
        EXPECT_LT(heights.topMm[heights.sideSeam + 1], armpitMm - 10);
        EXPECT_GT(heights.topMm.back(), bustMm);
    }
}

TEST(EdgeHeights, defaultBottomStaysClearOfTheLapAndRisesOverTheHip) {
    for (const Body& body : bodies()) {
        const auto heights = heightsOf(body, Style{});
        EXPECT_LT(heights.bottomMm.front(), body.valueMm(Measurement::waistToLap));
        EXPECT_GT(heights.bottomMm.front(), heights.bottomMm.back());
        EXPECT_GT(heights.bottomMm.back(), heights.bottomMm[heights.sideSeam + 1]);
        Style dipped;
        dipped.bottomEdge.shape = BottomShape::dipped;
        const auto overHip = heightsOf(body, dipped);
        EXPECT_GT(overHip.bottomMm[overHip.sideSeam + 1],
                  body.valueMm(Measurement::waistToHighHip));
        EXPECT_GT(overHip.bottomMm[overHip.sideSeam + 1], overHip.bottomMm.front());
    }
}

TEST(EdgeHeights, straightEdgesAreLevel) {
    Style style;
    style.topEdge.shape = TopShape::straight;
    style.bottomEdge.shape = BottomShape::straight;
    const auto pattern = draftCorset(samples::average(), style);
    ASSERT_TRUE(pattern);
    const double topMm = pattern->panels.front().edges[2].path.end().y();
    const double bottomMm = pattern->panels.front().edges[0].path.start().y();
    for (const Panel& panel : pattern->panels) {
        EXPECT_NEAR(panel.edges[2].path.start().y(), topMm, 1e-6);
        EXPECT_NEAR(panel.edges[2].path.end().y(), topMm, 1e-6);
        EXPECT_NEAR(panel.edges[0].path.start().y(), bottomMm, 1e-6);
        EXPECT_NEAR(panel.edges[0].path.end().y(), bottomMm, 1e-6);
    }
}

TEST(EdgeHeights, whatTheStyleGivesIsTakenToTheLetter) {
    Style style;
    style.topEdge.frontMm = 151;
    style.topEdge.bustSeamMm = 168;
    style.topEdge.sideMm = 149;
    style.topEdge.backMm = 133;
    style.topEdge.atSeamMm["1-2"] = 166;  // wins over the bust seam's own
    style.bottomEdge.frontMm = 140;
    style.bottomEdge.atSeamMm["4-5"] = 99;
    const auto heights = heightsOf(samples::average(), style);
    EXPECT_EQ(heights.topMm.front(), 151);
    EXPECT_EQ(heights.topMm[1], 166);
    EXPECT_EQ(heights.topMm[heights.sideSeam + 1], 149);
    EXPECT_EQ(heights.topMm.back(), 133);
    EXPECT_EQ(heights.bottomMm.front(), 140);
    EXPECT_EQ(heights.bottomMm[4], 99);
    const auto pattern = draftCorset(samples::average(), style);
    ASSERT_TRUE(pattern);
    const auto lengths = seamLengthsOf(edgeAt(*pattern, pattern->seams[0].front));
    EXPECT_NEAR(lengths.aboveWaistMm, 166, 1e-6);
}

TEST(EdgeHeights, oneGivenEndOfAStraightEdgeTakesTheOthersAlong) {
    Style style;
    style.topEdge.shape = TopShape::straight;
    style.topEdge.frontMm = 100;
    const auto heights = heightsOf(samples::average(), style);
    EXPECT_EQ(heights.topMm.back(), 100);
}

TEST(EdgeHeights, edgeFarBeyondTheBodyIsOneClearProblem) {
    Style style;
    style.topEdge.backMm = 450;
    const auto pattern = draftCorset(samples::average(), style);
    EXPECT_FALSE(pattern);
    ASSERT_EQ(pattern.problems.size(), 1U);
    const Problem& problem = pattern.problems.front();
    EXPECT_EQ(problem.code, ProblemCode::edgeHeightImpossible);
    EXPECT_EQ(problem.subject, "top_edge");
    EXPECT_EQ(problem.detail, "centre back");
    EXPECT_EQ(problem.figures[0].value, 450);
    EXPECT_EQ(problem.figures[2].value, 180 + 150);
}

}  // namespace
}  // namespace coutil
