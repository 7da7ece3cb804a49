#include "core/block/seam_edge.h"

#include <gtest/gtest.h>

namespace coutil {
namespace {

SuppressionCurve hourglass() {
    return FairCurveSolver({-218, -100, 0, 65, 130, 180}).through({-18, 8, 32, 19, 0, 1});
}

TEST(SeamEdge, followsTheCurveExactly) {
    const auto curve = hourglass();
    const auto edge = seamEdge(curve, 95, -0.5);
    for (double y = -300; y <= 260; y += 3.7) {
        const auto places = crossingsAtHeight(edge.path, y);
        ASSERT_EQ(places.size(), 1U) << y;
        EXPECT_NEAR(pointAt(edge.path, places[0]).x(), 95 - 0.5 * curve.valueMmAt(y), 1e-9) << y;
    }
}

TEST(SeamEdge, waistMarkIsTheZeroOfItsScale) {
    const auto edge = seamEdge(hourglass(), 0, 0.5);
    const Point waist = pointAt(edge.path, placeAt(edge, 0));
    EXPECT_NEAR(waist.y(), 0, 1e-9);
    EXPECT_NEAR(waist.x(), 16, 1e-9);
    EXPECT_NEAR(positionAtHeightMm(edge, 0), 0, 1e-9);
    EXPECT_GT(positionAtHeightMm(edge, 130), 130);  // along a curve it is farther
    EXPECT_LT(positionAtHeightMm(edge, -100), -100);
}

TEST(SeamEdge, trimmedEdgesOfUnequalPartsAreEquallyLong) {
    const auto curve = hourglass();
    const auto front = trimmed(seamEdge(curve, 95, -0.35), -110, 163);
    const auto back = trimmed(seamEdge(curve, 0, 0.65), -110, 163);
    EXPECT_NEAR(lengthMm(front), 273, 1e-7);
    EXPECT_NEAR(lengthMm(back), 273, 1e-7);
}

}  // namespace
}  // namespace coutil
