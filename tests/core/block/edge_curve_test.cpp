#include "core/block/edge_curve.h"

#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

namespace coutil {
namespace {

double angleDeg(const Vector& a, const Vector& b) {
    return std::acos(std::clamp(a.dot(b), -1.0, 1.0)) * 180 / std::numbers::pi;
}

// Three panels with leaning seams.
std::vector<PanelCorners> leaning() {
    const Vector left = Vector(-0.2, 1).normalized();
    const Vector right = Vector(0.15, 1).normalized();
    return {{{0, 140}, {95, 172}, Vector::UnitY(), left},
            {{3, 172}, {88, 160}, right, left},
            {{-2, 160}, {90, 138}, right, Vector::UnitY()}};
}

TEST(EdgeCurve, anglesAtEverySeamSumTo180) {
    const auto panels = leaning();
    const auto curves = edgeCurves(panels, LineMeeting::square, LineMeeting::square);
    for (std::size_t p = 0; p + 1 < panels.size(); ++p) {
        const Vector before = tangentAt(curves[p].pieces.back(), 1);
        const Vector after = tangentAt(curves[p + 1].pieces.front(), 0);
        EXPECT_NEAR(angleDeg(panels[p].backUp, -before) + angleDeg(panels[p + 1].frontUp, after),
                    180, 1e-9);
    }
}

TEST(EdgeCurve, meetsTheCentreSquareUnlessPointed) {
    const auto panels = leaning();
    const auto square = edgeCurves(panels, LineMeeting::square, LineMeeting::square);
    EXPECT_NEAR(angleDeg(tangentAt(square.front().pieces.front(), 0), Vector::UnitY()), 90, 1e-9);
    EXPECT_NEAR(angleDeg(tangentAt(square.back().pieces.back(), 1), Vector::UnitY()), 90, 1e-9);
    const auto pointed = edgeCurves(panels, LineMeeting::pointed, LineMeeting::square);
    EXPECT_LT(angleDeg(tangentAt(pointed.front().pieces.front(), 0), Vector::UnitY()), 80);
}

TEST(EdgeCurve, cornersOnACircleGiveTheCircle) {
    // Upright seams, corners of a flat arc of radius 400: the line leaves it by less than 0.05 mm.
    constexpr double kRadiusMm = 400;
    const auto onArc = [](double rad) {
        return Point(kRadiusMm * std::sin(rad), kRadiusMm * std::cos(rad));
    };
    std::vector<PanelCorners> panels;
    for (int p = 0; p < 4; ++p)
        panels.push_back({onArc(0.2 * p), onArc(0.2 * (p + 1)), Vector::UnitY(), Vector::UnitY()});
    const auto curves = edgeCurves(panels, LineMeeting::square, LineMeeting::pointed);
    for (const Path& curve : curves)
        for (double t = 0; t <= 1; t += 0.05)
            EXPECT_NEAR(pointAt(curve, {0, t}).norm(), kRadiusMm, 0.05);
}

}  // namespace
}  // namespace coutil
