#include "core/alterations/whole_pattern.h"

#include <gtest/gtest.h>

#include "core/pattern/panel_key.h"
#include "core/tracing/tracing.h"
#include "tests/core/alterations/drafted.h"

namespace coutil {
namespace {

using samples::altered;
using samples::drafted;
using samples::takeIn;

Pattern onFold() {
    Style style;
    style.front = FrontClosure::fold;
    return *draftCorset(samples::average(), style);
}

Alteration symmetric(SymmetrySource from) { return {.id = "s", .change = MakeSymmetric{from}}; }

TEST(WholePattern, holdsLeftPanelsThenRightOnes) {
    const Pattern half = drafted(5);
    const Pattern whole = wholeOf(half);
    ASSERT_EQ(whole.panels.size(), 10U);
    EXPECT_EQ(whole.seams.size(), 2 * half.seams.size());
    EXPECT_EQ(panelKey(whole.panels[1]), "2 left");
    EXPECT_EQ(panelKey(whole.panels[6]), "2 right");
    EXPECT_EQ(panelKey(half.panels[1]), "2");
    EXPECT_EQ(panelWithKey(whole, "2 right"), 6U);
    EXPECT_EQ(panelWithKey(whole, "2"), std::nullopt);
    EXPECT_EQ(whole.panels[6].edges, half.panels[1].edges);
    EXPECT_TRUE(samples::brokenPromises(whole).empty());
    EXPECT_EQ(wholeOf(whole), whole);
}

TEST(WholePattern, becomesTheSameHalfAgain) {
    for (const Pattern& half : {drafted(6), onFold()}) {
        for (const auto from :
             {SymmetrySource::mean, SymmetrySource::left, SymmetrySource::right}) {
            const auto again = symmetricOf(wholeOf(half), from);
            ASSERT_TRUE(again);
            EXPECT_EQ(again->panels, half.panels);
            EXPECT_EQ(again->seams, half.seams);
        }
    }
}

TEST(WholePattern, aFoldBecomesASeamAndIsTracedWithItsAllowance) {
    const Pattern half = onFold();
    const auto outcome =
        applyAlterations(half, std::vector<Alteration>{takeIn("2-3", {{0, 6}}, BodySide::right)});
    ASSERT_EQ(outcome.problems.size(), 1U);
    EXPECT_EQ(outcome.problems.front().code, ProblemCode::foldBecomesSeam);
    EXPECT_EQ(outcome.problems.front().severity, Severity::note);
    AllowanceStyle allowance;
    allowance.seamMm = 13;
    const auto tracings = traceTracings(outcome.pattern, allowance);
    ASSERT_TRUE(tracings);
    for (const Tracing& tracing : *tracings) {
        EXPECT_EQ(tracing.cutCount, 1);
        EXPECT_FALSE(tracing.isOnFold);
        if (tracing.panel != "1") continue;
        for (std::size_t e = 0; e < tracing.sewing.size(); ++e) {
            if (tracing.sewing[e].name == "centre front") {
                EXPECT_EQ(tracing.allowancesMm[e], 13);
            }
        }
    }
}

TEST(WholePattern, rightPanelsAreTracedTurnedOver) {
    const Pattern whole = wholeOf(drafted(5));
    const auto tracings = traceTracings(whole, {});
    ASSERT_TRUE(tracings);
    const Tracing& left = (*tracings)[1];
    const Tracing& right = (*tracings)[6];
    EXPECT_EQ(right.side, PanelSide::right);
    const Box leftBox = boundsOf(left.cutting);
    const Box rightBox = boundsOf(right.cutting);
    EXPECT_NEAR(rightBox.lowest.x(), -leftBox.highest.x(), 1e-9);
    EXPECT_NEAR(rightBox.highest.x(), -leftBox.lowest.x(), 1e-9);
    EXPECT_GT(signedAreaMm2(right.cutting), 0);
    EXPECT_NEAR(signedAreaMm2(right.cutting), signedAreaMm2(left.cutting), 1e-6);
    // Sewing edges follow each other round the piece, and keep their names, lengths and marks.
    for (std::size_t e = 0; e < right.sewing.size(); ++e) {
        const Edge& edge = right.sewing[e];
        const Edge& next = right.sewing[(e + 1) % right.sewing.size()];
        EXPECT_LT((edge.path.end() - next.path.start()).norm(), 1e-9) << edge.name;
        const auto same = std::ranges::find(left.sewing, edge.name, &Edge::name);
        ASSERT_NE(same, left.sewing.end());
        EXPECT_EQ(right.allowancesMm[e],
                  left.allowancesMm[static_cast<std::size_t>(same - left.sewing.begin())]);
        if (!edge.waistMarkAtMm) continue;
        EXPECT_NEAR(seamLengthsOf(edge).aboveWaistMm, seamLengthsOf(*same).aboveWaistMm, 1e-6);
        const Point mark = *pointAtSeamPosition(edge, 0);
        const Point turnedOver(-mark.x(), mark.y());
        EXPECT_LT((turnedOver - *pointAtSeamPosition(*same, 0)).norm(), 1e-9) << edge.name;
    }
}

TEST(WholePattern, masterHasTheRightPanelsInARowOfTheirOwn) {
    const Pattern whole = wholeOf(drafted(5));
    const auto placements = masterPlacements(whole, 20);
    double lowestLeft = 1e9;
    double highestRight = -1e9;
    for (std::size_t p = 0; p < placements.size(); ++p) {
        const Box box = boundsOf(placed(outlineOf(whole.panels[p]), placements[p]));
        if (p < 5) lowestLeft = std::min(lowestLeft, box.lowest.y());
        if (p >= 5) highestRight = std::max(highestRight, box.highest.y());
    }
    EXPECT_NEAR(lowestLeft - highestRight, 20, 1e-9);
    EXPECT_EQ(placements[0].shift.x(), placements[5].shift.x());
}

// Half of what one side was taken in, on both.
TEST(WholePattern, theMeanOfBothSidesLiesMidway) {
    const Pattern half = drafted(6);
    const Pattern mean =
        altered(half, {takeIn("3-4", {{0, 12}}, BodySide::left), symmetric(SymmetrySource::mean)});
    const Pattern halfTaken = altered(half, {takeIn("3-4", {{0, 6}})});
    ASSERT_EQ(mean.panels.size(), half.panels.size());
    EXPECT_TRUE(samples::brokenPromises(mean).empty());
    for (std::size_t p = 0; p < mean.panels.size(); ++p) {
        for (std::size_t e = 0; e < mean.panels[p].edges.size(); ++e) {
            for (const Point& point : flattened(mean.panels[p].edges[e].path, 0.05))
                EXPECT_LT(closestOn(halfTaken.panels[p].edges[e].path, point).distanceMm, 0.3)
                    << p << " " << e;
        }
    }
    EXPECT_EQ(
        altered(half, {takeIn("3-4", {{0, 12}}, BodySide::left), symmetric(SymmetrySource::right)})
            .panels,
        half.panels);
}

}  // namespace
}  // namespace coutil
