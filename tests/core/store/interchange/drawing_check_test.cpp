// A drawing that came back is compared with what would be drawn now; what was done to it is known
// here, so the figures have to be that.
#include "core/store/drawing_check.h"

#include <cmath>

#include <gtest/gtest.h>

#include "core/store/interchange.h"
#include "tests/core/store/interchange/sample_pieces.h"

namespace coutil {
namespace {

Drawing drawn() { return *readDrawingSvg(writeTracingsSvg(samples::tracings(), samples::title())); }

void place(DrawnPanel& panel, const Placement& placement, double scale = 1) {
    for (DrawnLine& line : panel.lines) {
        for (Cubic& c : line.path.pieces) {
            c = {scale * c.p0, scale * c.p1, scale * c.p2, scale * c.p3};
        }
        line.path = placed(line.path, placement);
    }
}

TEST(DrawingCheck, theSameIsTheSame) {
    const DrawingCheck check = checkDrawing(drawn(), drawn());
    EXPECT_EQ(check.panels.size(), samples::tracings().size());
    EXPECT_TRUE(check.problems.empty());
    for (const DrawnPanelCheck& panel : check.panels) {
        EXPECT_LE(panel.largestMm, 1e-6);
        EXPECT_NEAR(panel.scale, 1, 1e-9);
    }
}

TEST(DrawingCheck, movedAndTurnedPiecesAreStillTheSame) {
    Drawing moved = drawn();
    for (std::size_t i = 0; i < moved.panels.size(); ++i) {
        const auto k = static_cast<double>(i);
        place(moved.panels[i], {0.4 + k, Vector(300 * k, -70), false});
    }
    const DrawingCheck check = checkDrawing(moved, drawn());
    EXPECT_TRUE(check.problems.empty());
    for (const DrawnPanelCheck& panel : check.panels) EXPECT_LE(panel.largestMm, 1e-5);
}

TEST(DrawingCheck, aBentLineIsFoundWithItsPlace) {
    Drawing bent = drawn();
    DrawnLine& line = bent.panels.at(1).lines.front();
    const Point before = pointAt(line.path.pieces.front(), 0.5);
    // The middle of a cubic moves by three quarters of what both inner points move.
    const Vector by(0.8, 0.8);
    line.path.pieces.front().p1 += by;
    line.path.pieces.front().p2 += by;
    const DrawingCheck check = checkDrawing(bent, drawn());
    ASSERT_EQ(check.problems.size(), 1U);
    EXPECT_EQ(check.problems[0].code, ProblemCode::drawingPanelOff);
    EXPECT_EQ(check.problems[0].panel, bent.panels[1].name);
    ASSERT_TRUE(check.problems[0].at);
    EXPECT_LE((*check.problems[0].at - before).norm(), 40);
    EXPECT_GT(check.panels[1].largestMm, 0.3);
    EXPECT_LE(check.panels[1].largestMm, 0.75 * by.norm() + 1e-6);
    for (std::size_t i = 0; i < check.panels.size(); ++i) {
        if (i == 1) continue;
        EXPECT_LE(check.panels[i].largestMm, 1e-6);
    }
}

// 90 instead of 96 dots an inch, the slip of older programs (practice).
TEST(DrawingCheck, aScaledDrawingIsToldAsSuch) {
    Drawing scaled = drawn();
    for (DrawnPanel& panel : scaled.panels) place(panel, {}, 90.0 / 96);
    const DrawingCheck check = checkDrawing(scaled, drawn());
    ASSERT_EQ(check.problems.size(), scaled.panels.size());
    for (const Problem& problem : check.problems) {
        EXPECT_EQ(problem.code, ProblemCode::drawingScaled);
        EXPECT_NEAR(problem.figures.at(0).value, 93.75, 1e-6);
    }
}

TEST(DrawingCheck, missingAndUnknownPanelsAreTold) {
    Drawing other = drawn();
    const std::string gone = other.panels.front().name;
    other.panels.front().name = "99";
    const DrawingCheck check = checkDrawing(other, drawn());
    ASSERT_EQ(check.problems.size(), 2U);
    EXPECT_EQ(check.problems[0].code, ProblemCode::drawingPanelMissing);
    EXPECT_EQ(check.problems[0].panel, gone);
    EXPECT_EQ(check.problems[1].code, ProblemCode::drawingPanelUnknown);
    EXPECT_EQ(check.problems[1].panel, "99");
}

}  // namespace
}  // namespace coutil
