// Eyelets: figures of the trade (common practice), lace lengths in closed form, many bodies.
#include "core/making_up/eyelets.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "tests/core/making_up/made_up_patterns.h"

namespace coutil {
namespace {

using made_up::rectangles;

// Handed down: pitch 20 to 25, closer at the waist, first and last 10 to 15 from the ends, column
// 10 to 15 from the edge, a flat bone on both sides, 6 to 8 between eyelet and bone (practice, no
// source).
TEST(Eyelets, usualChoicesAreThoseOfTheTrade) {
    const EyeletChoices usual;
    const auto eyelets = eyeletsFor(rectangles(4, 80, 200, 120), usual);
    ASSERT_TRUE(eyelets.hasValue());
    EXPECT_TRUE(eyelets.problems.empty());
    EXPECT_TRUE(eyelets->hasWaistPair);
    for (const double pitchMm : {eyelets->pitchAboveMm, eyelets->pitchBelowMm}) {
        EXPECT_GE(pitchMm, 20);
        EXPECT_LE(pitchMm, 25);
    }
    EXPECT_NEAR(eyelets->pairs.front().positionMm, -120 + 12, 1e-9);
    EXPECT_NEAR(eyelets->pairs.back().positionMm, 200 - 12, 1e-9);
    EXPECT_NEAR(eyelets->pairs.front().left.x(), 80 - 12, 1e-9);
    EXPECT_NEAR(eyelets->pairs.front().left.y(), -120 + 12, 1e-9);
    const auto bones = bonesBesideEyelets(usual);
    EXPECT_EQ(bones.outerMm, 5);
    EXPECT_EQ(bones.innerMm, 19);
}

TEST(Eyelets, pairAtTheWaistAndEqualPitchesFromThere) {
    EyeletChoices choices;
    choices.pitchMm = 20;
    choices.endMm = 10;
    choices.waistPairMm = 10;
    // 105 less 10 less 5: 90 up, 65 less 15: 50 down.
    const auto positions = eyeletPositionsMm({105, -65, 0, 0}, choices);
    ASSERT_EQ(positions.size(), 10U);  // steps: 50 / 20 -> 3, 90 / 20 -> 5
    EXPECT_NEAR(positions[0], -55, 1e-9);
    EXPECT_NEAR(positions[3], -5, 1e-9);
    EXPECT_NEAR(positions[4], 5, 1e-9);
    EXPECT_NEAR(positions[5], 23, 1e-9);
    EXPECT_NEAR(positions[9], 95, 1e-9);
}

TEST(Eyelets, noPairWhereTheGarmentEndsNearTheWaist) {
    EyeletChoices choices;
    choices.pitchMm = 20;
    choices.endMm = 10;
    const auto positions = eyeletPositionsMm({150, -20, 0, 0}, choices);
    for (std::size_t i = 1; i < positions.size(); ++i)
        EXPECT_NEAR(positions[i] - positions[i - 1], 150.0 / 8, 1e-9);
    EXPECT_NEAR(positions.front(), -10, 1e-9);
    EXPECT_NEAR(positions.back(), 140, 1e-9);
    EXPECT_TRUE(eyeletPositionsMm({20, -15, 0, 0}, choices).empty());
}

// 30 up and 40 across are 50 of lace (3-4-5): two strands, two steps, and once straight across.
TEST(Eyelets, laceOfKnownTriangles) {
    EXPECT_NEAR(zigzagLengthMm({0, 30, 60}, {40, 40, 40}), 40 + 2 * 2 * 50, 1e-12);
    EXPECT_NEAR(zigzagLengthMm({0, 30}, {30, 50}), 30 + 2 * 50, 1e-12);  // V-shaped: 40 on average
    EXPECT_NEAR(zigzagLengthMm({7}, {40}), 40, 1e-12);
    EXPECT_EQ(zigzagLengthMm({}, {}), 0);
}

TEST(Eyelets, laceReachesOpened) {
    EyeletChoices choices;
    choices.pitchMm = 30;
    choices.endMm = 10;
    choices.waistPairMm = 0;
    choices.columnMm = 15;
    choices.openedGapMm = 42;  // 72 across; 30 up: 78 of lace (5-12-13)
    choices.tailMm = 100;
    const auto eyelets = eyeletsFor(rectangles(4, 80, 70, 40, EdgeRole::opening, 10), choices);
    ASSERT_TRUE(eyelets.hasValue());
    ASSERT_EQ(eyelets->pairs.size(), 4U);
    EXPECT_NEAR(eyelets->zigzagMm, 40 + 3 * 2 * 50, 1e-9);
    EXPECT_NEAR(eyelets->laceMm, 72 + 3 * 2 * 78 + 2 * 100, 1e-9);
}

TEST(Eyelets, roomForColumnBoneAndSpace) {
    const Pattern pattern = rectangles(4, 80, 200, 120);
    EyeletChoices choices;
    choices.boneChannelMm = 12;  // 12 - 7 - 6 < 0: over the edge; 7 < 6 + 2.5: into the hole
    const auto wide = eyeletsFor(pattern, choices);
    ASSERT_TRUE(wide.hasValue());
    ASSERT_EQ(wide.problems.size(), 2U);
    for (const Problem& problem : wide.problems) {
        EXPECT_EQ(problem.code, ProblemCode::eyeletRoomTooNarrow);
        EXPECT_FALSE(isError(problem));
        EXPECT_LT(problem.figures[0].value, problem.figures[1].value);
    }
    // 12 + 7 + 4.5 = 23.5 are needed across.
    EXPECT_TRUE(eyeletsFor(rectangles(4, 23.6, 200, 120), {}).problems.empty());
    const auto narrow = eyeletsFor(rectangles(4, 23.4, 200, 120), {});
    ASSERT_EQ(narrow.problems.size(), 1U);
    EXPECT_EQ(narrow.problems[0].panel, "4");
    EXPECT_NEAR(narrow.problems[0].figures[1].value, 23.5, 1e-9);
}

TEST(Eyelets, whatDoesNotFitIsTold) {
    const auto low = eyeletsFor(rectangles(4, 80, 20, 15), {});
    EXPECT_FALSE(low.hasValue());
    ASSERT_EQ(low.problems.size(), 1U);
    EXPECT_EQ(low.problems[0].code, ProblemCode::eyeletsDoNotFit);
    EXPECT_EQ(low.problems[0].figures[0].value, 35);
    EXPECT_EQ(low.problems[0].figures[1].value, 46);
    EyeletChoices bad;
    bad.pitchMm = std::numeric_limits<double>::quiet_NaN();
    EXPECT_EQ(eyeletsFor(rectangles(4, 80, 200, 120), bad).problems.at(0).code,
              ProblemCode::makingUpOutOfRange);
    Pattern closed = rectangles(4, 80, 200, 120);
    made_up::edgeNamed(closed.panels.back(), "centre back").role = EdgeRole::seam;
    const auto none = eyeletsFor(closed, {});
    ASSERT_TRUE(none.hasValue());
    EXPECT_TRUE(none->pairs.empty());
}

bool isInside(const Panel& panel, const Point& at) {
    const auto ring = flattened(outlineOf(panel), 0.01);
    bool isIn = false;
    for (std::size_t i = 0; i + 1 < ring.size(); ++i) {
        const Point& a = ring[i];
        const Point& b = ring[i + 1];
        if ((a.y() > at.y()) == (b.y() > at.y())) continue;
        if (at.x() < a.x() + (at.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x())) isIn = !isIn;
    }
    return isIn;
}

// On every body: as many left as right, at matching heights, the whole hole inside the panel at the
// column's distance from the edge, ends and pitches as chosen, also where the sides differ.
TEST(Eyelets, onManyBodies) {
    int unlike = 0;
    made_up::visitCorsets(23, [&](const Pattern& pattern, const Style&) {
        const EyeletChoices choices;
        const auto eyelets = eyeletsFor(pattern, choices);
        ASSERT_TRUE(eyelets.hasValue());
        ASSERT_GE(eyelets->pairs.size(), 4U);
        const Edge& left = edgeAt(pattern, eyelets->edges.left);
        const Edge& right = edgeAt(pattern, eyelets->edges.right);
        unlike += eyelets->stretch.longerAboveMm > 1;
        const double topMm =
            std::min(seamLengthsOf(left).aboveWaistMm, seamLengthsOf(right).aboveWaistMm);
        EXPECT_NEAR(eyelets->pairs.back().positionMm, topMm - choices.endMm, 1e-6);
        double lastMm = -1e9;
        for (const EyeletPair& pair : eyelets->pairs) {
            EXPECT_NEAR(pair.left.y(), pair.right.y(), 1e-6);
            EXPECT_NEAR(closestOn(left.path, pair.left).distanceMm, choices.columnMm, 1e-6);
            EXPECT_NEAR(closestOn(right.path, pair.right).distanceMm, choices.columnMm, 1e-6);
            for (const double turn : {0.0, 1.0, 2.0, 3.0, 4.0, 5.0}) {
                const Vector rim = choices.diameterMm / 2 * Vector(std::cos(turn), std::sin(turn));
                EXPECT_TRUE(isInside(pattern.panels[eyelets->edges.left.panel], pair.left + rim));
            }
            EXPECT_GE(pair.positionMm - lastMm, choices.waistPairMm - 1e-6);
            lastMm = pair.positionMm;
        }
        EXPECT_GT(eyelets->laceMm, eyelets->zigzagMm);
    });
    EXPECT_GT(unlike, 5);
}

}  // namespace
}  // namespace coutil
