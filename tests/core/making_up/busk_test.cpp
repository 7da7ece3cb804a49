// Busks: stock lengths and places in closed form, and on many bodies.
#include "core/making_up/busk.h"

#include <algorithm>

#include "tests/core/making_up/made_up_patterns.h"

namespace coutil {
namespace {

using made_up::rectangles;

TEST(Busk, theLongestThatFitsWithBothClearances) {
    BuskChoices choices;
    choices.lengthsMm = {350, 250, 300};
    choices.freeAtEndMm = 8;
    choices.endStudMm = 20;
    const auto busk = buskFor(rectangles(4, 80, 200, 120), choices);
    ASSERT_TRUE(busk.hasValue());
    ASSERT_TRUE(busk->has_value());
    EXPECT_EQ((*busk)->lengthMm, 300);
    EXPECT_NEAR((*busk)->roomMm, 304, 1e-9);
    EXPECT_NEAR((*busk)->bottomAtMm, -120 + 8 + 2, 1e-9);
    EXPECT_NEAR((*busk)->topAtMm, 200 - 8 - 2, 1e-9);
    // 260 between the outer studs, at about 60: four spaces of 65.
    ASSERT_EQ((*busk)->studs.size(), 5U);
    EXPECT_NEAR((*busk)->studs[1].positionMm, -110 + 20 + 65, 1e-9);
    EXPECT_NEAR((*busk)->studs[1].left.x(), 0, 1e-9);
    EXPECT_NEAR((*busk)->studs[1].left.y(), -25, 1e-9);
    choices.freeAtEndMm = 10;
    EXPECT_EQ((*buskFor(rectangles(4, 80, 200, 120), choices))->lengthMm, 300);
    choices.freeAtEndMm = 10.1;
    EXPECT_EQ((*buskFor(rectangles(4, 80, 200, 120), choices))->lengthMm, 250);
}

TEST(Busk, noneWhereTheFrontIsClosed) {
    const auto busk = buskFor(rectangles(4, 80, 200, 120, EdgeRole::fold), {});
    ASSERT_TRUE(busk.hasValue());
    EXPECT_FALSE(busk->has_value());
}

TEST(Busk, tooShortAFrontAndBadChoicesAreTold) {
    const auto shortFront = buskFor(rectangles(4, 80, 120, 60), {});
    EXPECT_FALSE(shortFront.hasValue());
    ASSERT_EQ(shortFront.problems.size(), 1U);
    EXPECT_EQ(shortFront.problems[0].code, ProblemCode::buskDoesNotFit);
    EXPECT_NEAR(shortFront.problems[0].figures[0].value, 164, 1e-9);
    EXPECT_EQ(shortFront.problems[0].figures[1].value, 200);
    BuskChoices none;
    none.lengthsMm.clear();
    EXPECT_EQ(buskFor(rectangles(4, 80, 200, 120), none).problems.at(0).code,
              ProblemCode::makingUpOutOfRange);
}

TEST(Busk, onManyBodies) {
    int busks = 0;
    made_up::visitCorsets(31, [&](const Pattern& pattern, const Style& style) {
        const BuskChoices choices;
        const auto found = buskFor(pattern, choices);
        if (!found.hasValue()) {
            // A low front on a short waist: shorter than any busk in stock.
            const Problem& problem = found.problems.at(0);
            EXPECT_EQ(problem.code, ProblemCode::buskDoesNotFit);
            EXPECT_LT(problem.figures[0].value, 200);
            return;
        }
        ASSERT_EQ(found->has_value(), style.front == FrontClosure::busk);
        if (!found->has_value()) return;
        ++busks;
        const Busk& busk = **found;
        const double frontMm = lengthMm(edgeAt(pattern, busk.edges.left).path);
        EXPECT_LE(busk.lengthMm, frontMm - 2 * choices.freeAtEndMm + 1e-6);
        for (const double stockMm : choices.lengthsMm)
            EXPECT_TRUE(stockMm <= busk.lengthMm || stockMm > busk.roomMm);
        const SeamLengths lengths = seamLengthsOf(edgeAt(pattern, busk.edges.left));
        EXPECT_LE(busk.topAtMm, lengths.aboveWaistMm - choices.freeAtEndMm + 1e-6);
        EXPECT_GE(busk.bottomAtMm, -lengths.belowWaistMm + choices.freeAtEndMm - 1e-6);
        for (const BuskStud& stud : busk.studs) {
            EXPECT_GE(stud.positionMm, busk.bottomAtMm + choices.endStudMm - 1e-6);
            EXPECT_LE(stud.positionMm, busk.topAtMm - choices.endStudMm + 1e-6);
            EXPECT_NEAR(stud.left.y(), stud.right.y(), 1e-6);
        }
    });
    EXPECT_GE(busks, 5);
}

}  // namespace
}  // namespace coutil
