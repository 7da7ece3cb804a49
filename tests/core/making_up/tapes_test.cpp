// Waist tape, tape totals and binding: closed form, and sums of edges on many bodies.
#include <algorithm>

#include "core/geometry/tolerances.h"
#include "core/making_up/binding.h"
#include "core/making_up/waist_tape.h"
#include "tests/core/making_up/made_up_patterns.h"

namespace coutil {
namespace {

using made_up::rectangles;

// 20 to 25 mm wide, the finished waist less the gap and turnings (practice, no source).
TEST(WaistTape, ofRectangles) {
    const auto tape = waistTapeFor(rectangles(4, 80, 200, 120), {true, 22, 15});
    ASSERT_TRUE(tape.hasValue());
    EXPECT_EQ(tape->pieces, (std::vector<TapePiece>{{22, 320, 350, 2}}));
    EXPECT_EQ(tape->finishedMm, 640);
    ASSERT_EQ(tape->catches.size(), 4U);
    EXPECT_EQ(tape->catches[2].panel, "3");
    EXPECT_EQ(tape->catches[2].frontAlongMm, 160);
    EXPECT_EQ(tape->catches[2].backAlongMm, 240);
    EXPECT_EQ(tape->catches[2].middle, Point(40, 0));
    EXPECT_TRUE(waistTapeFor(rectangles(4, 80, 200, 120), {false, 22, 15})->pieces.empty());
    const auto folded = waistTapeFor(rectangles(4, 80, 200, 120, EdgeRole::fold), {true, 22, 15});
    EXPECT_EQ(folded->pieces, (std::vector<TapePiece>{{22, 640, 670, 1}}));
}

TEST(WaistTape, aPanelAboveTheWaistIsTold) {
    Pattern pattern = rectangles(4, 80, 200, 120);
    pattern.panels[1] = rectangles(4, 80, 200, -10).panels[1];
    const auto tape = waistTapeFor(pattern, {});
    EXPECT_FALSE(tape.hasValue());
    ASSERT_EQ(tape.problems.size(), 1U);
    EXPECT_EQ(tape.problems[0].code, ProblemCode::tapeMissesPanel);
    EXPECT_EQ(tape.problems[0].panel, "2");
}

TEST(WaistTape, onManyBodies) {
    made_up::visitCorsets(29, [](const Pattern& pattern, const Style& style) {
        const WaistTapeChoices choices;
        const auto tape = waistTapeFor(pattern, choices);
        ASSERT_TRUE(tape.hasValue());
        ASSERT_EQ(tape->catches.size(), pattern.panels.size());
        for (std::size_t p = 0; p < pattern.panels.size(); ++p) {
            const TapeCatch& caught = tape->catches[p];
            const Path outline = outlineOf(pattern.panels[p]);
            for (const Point& at : {caught.front, caught.middle, caught.back})
                EXPECT_NEAR(at.y(), 0, 1e-6);
            EXPECT_LT(closestOn(outline, caught.front).distanceMm, 1e-6);
            EXPECT_LT(closestOn(outline, caught.back).distanceMm, 1e-6);
        }
        const auto waist = std::ranges::find(pattern.levels, "waist", &Level::name);
        ASSERT_NE(waist, pattern.levels.end());
        EXPECT_NEAR(tape->finishedMm, *waist->patternMm - waist->lacingGapMm, 0.01);
        double cutMm = 0;
        int pieces = 0;
        for (const TapePiece& piece : tape->pieces) {
            cutMm += piece.count * piece.cutMm;
            pieces += piece.count;
        }
        EXPECT_EQ(pieces, style.front == FrontClosure::busk ? 2 : 1);
        EXPECT_NEAR(cutMm, tape->finishedMm + pieces * 2 * choices.turningMm, 1e-6);
    });
}

TEST(Tapes, totalsByWidth) {
    EXPECT_EQ(tapesByWidth({{13, 300, 310, 4}, {9, 200, 200, 2}, {13, 250, 260, 2}}),
              (std::vector<TapeTotal>{{9, 400, 2}, {13, 4 * 310 + 2 * 260, 6}}));
    EXPECT_TRUE(tapesByWidth({}).empty());
}

// A tape along 3-4-5 triangles' long sides, one turned at the top; folded channels take none.
TEST(Tapes, ofChannels) {
    Channel tape{.key = "panel 2 middle", .line = straightPath({0, 0}, {30, 40}), .widthMm = 9};
    Channel folded = tape;
    folded.carrier = ChannelCarrier::ownAllowance;
    Channel left{.key = "bust",
                 .side = PanelSide::left,
                 .line = straightPath({0, 0}, {60, 80}),
                 .widthMm = 9};
    left.endsAtTopEdge = false;
    const auto pieces = channelTapes({tape, folded, left}, false, true, 12);
    ASSERT_EQ(pieces.size(), 2U);
    EXPECT_NEAR(pieces[0].finishedMm, 50, 1e-9);
    EXPECT_NEAR(pieces[0].cutMm, 62, 1e-9);
    EXPECT_EQ(pieces[0].count, 2);
    EXPECT_NEAR(pieces[1].cutMm, 100, 1e-9);
    EXPECT_EQ(pieces[1].count, 1);
    const auto totals = tapesByWidth(pieces);
    ASSERT_EQ(totals.size(), 1U);
    EXPECT_NEAR(totals[0].cutMm, 224, 1e-9);
    EXPECT_EQ(totals[0].pieces, 3);
}

// Cut 4 times the finished width and 3 mm; finished 6 to 12 mm (practice, no source).
TEST(Binding, ofRectangles) {
    EXPECT_EQ(bindingCutWidthMm(6), 27);
    EXPECT_EQ(bindingCutWidthMm(8), 35);
    AllowanceStyle bound;
    const auto binding = bindingFor(rectangles(4, 80, 200, 120), bound, {8, 15});
    ASSERT_TRUE(binding.hasValue());
    EXPECT_EQ(binding->cutWidthMm, 35);
    EXPECT_EQ(binding->strips,
              (std::vector<BindingStrip>{{EdgeRole::top, PanelSide::both, 320, 350, 2},
                                         {EdgeRole::bottom, PanelSide::both, 320, 350, 2}}));
    EXPECT_EQ(binding->totalMm, 1400);
    bound.isBottomBound = false;
    const auto folded = bindingFor(rectangles(4, 80, 200, 120, EdgeRole::fold), bound, {8, 15});
    EXPECT_EQ(folded->strips,
              (std::vector<BindingStrip>{{EdgeRole::top, PanelSide::both, 640, 670, 1}}));
    EXPECT_EQ(bindingFor(rectangles(4, 80, 200, 120), bound, {0, 15}).problems.at(0).code,
              ProblemCode::makingUpOutOfRange);
}

// Length of a chain of chords of the edges with a role, independent of the core's arc lengths.
double chordsMm(const Pattern& pattern, EdgeRole role) {
    double sumMm = 0;
    for (const Panel& panel : pattern.panels) {
        for (const Edge& edge : panel.edges) {
            if (edge.role != role) continue;
            const auto chain = flattened(edge.path, 1e-5);
            for (std::size_t i = 1; i < chain.size(); ++i)
                sumMm += (panel.side == PanelSide::both ? 2 : 1) * (chain[i] - chain[i - 1]).norm();
        }
    }
    return sumMm;
}

TEST(Binding, onManyBodies) {
    made_up::visitCorsets(29, [](const Pattern& pattern, const Style& style) {
        const BindingChoices choices;
        const auto binding = bindingFor(pattern, style.allowance, choices);
        ASSERT_TRUE(binding.hasValue());
        for (const EdgeRole role : {EdgeRole::top, EdgeRole::bottom}) {
            const bool isBound =
                role == EdgeRole::top ? style.allowance.isTopBound : style.allowance.isBottomBound;
            double lineMm = 0;
            double cutMm = 0;
            int strips = 0;
            for (const BindingStrip& strip : binding->strips) {
                if (strip.line != role) continue;
                lineMm += strip.count * strip.lineMm;
                cutMm += strip.count * strip.cutMm;
                strips += strip.count;
            }
            const int wanted = style.front == FrontClosure::busk ? 2 : 1;
            EXPECT_EQ(strips, isBound ? wanted : 0);
            EXPECT_NEAR(lineMm, isBound ? chordsMm(pattern, role) : 0, 0.01);
            EXPECT_NEAR(cutMm, lineMm + strips * 2 * choices.turningMm, 1e-6);
        }
    });
}

}  // namespace
}  // namespace coutil
