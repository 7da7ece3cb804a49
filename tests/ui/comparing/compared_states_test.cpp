#include "ui/comparing/compared_states.h"

#include <gtest/gtest.h>

#include "tests/ui/timeline/grown_garment.h"

namespace coutil {
namespace {

StateRef inked(const Folio& folio, int number) { return {digestOf(folio, number), {}}; }

TEST(ComparedStates, listsPencilsAndRevisionsTheNewestFirst) {
    const auto states = comparableStates(grownFolio(), 0);
    ASSERT_EQ(states.size(), 6U);
    EXPECT_EQ(states[0].words, QStringLiteral("pencil \u201cwider hip\u201d"));
    EXPECT_EQ(states[1].words, "pencil");
    for (int i = 0; i < 4; ++i) EXPECT_EQ(states[static_cast<std::size_t>(2 + i)].revision, 4 - i);
    EXPECT_TRUE(states[4].words.startsWith("revision 2, "));
}

TEST(ComparedStates, statesOfOtherGarmentsFollowWithTheirName) {
    Folio folio = grownFolio();
    Garment other = folio.garments.front();
    other.id = "other";
    other.name = "Act two";
    other.revisions.clear();
    for (Pencil& pencil : other.pencils) pencil.id += " of act two";
    folio.garments.push_back(other);
    const auto states = comparableStates(folio, 1);
    ASSERT_EQ(states.size(), 8U);
    EXPECT_EQ(states[1].words, "pencil");
    EXPECT_EQ(states[3].words,
              QString::fromStdString(folio.garments.front().name) + QStringLiteral(": pencil"));
}

TEST(ComparedStates, linesNeverLookAlike) {
    const Folio folio = grownFolio();
    const auto revisions = comparedStates(folio, inked(folio, 1), inked(folio, 3));
    ASSERT_NE(revisions, nullptr);
    EXPECT_EQ(revisions->a.revision, 1);
    EXPECT_EQ(revisions->b.revision, 3);
    const auto pencils = comparedStates(folio, {{}, "main pencil"}, {{}, "side pencil"});
    ASSERT_NE(pencils, nullptr);
    EXPECT_FALSE(pencils->a.isDotted);
    EXPECT_TRUE(pencils->b.isDotted);
    const auto sides = comparedSides(folio, inked(folio, 2));
    ASSERT_NE(sides, nullptr);
    EXPECT_NE(sides->a.revision, sides->b.revision);
    EXPECT_EQ(lineNameA(*sides), "left side");
    EXPECT_EQ(lineNameB(*sides), "right side");
}

TEST(ComparedStates, namesBothWithTheirDates) {
    const Folio folio = grownFolio();
    const auto states = comparedStates(folio, inked(folio, 1), {{}, "main pencil"});
    ASSERT_NE(states, nullptr);
    EXPECT_TRUE(lineNameA(*states).startsWith("A: revision 1, "));
    EXPECT_EQ(lineNameB(*states), "B: pencil");
    EXPECT_TRUE(titleOf(*states).endsWith(" against pencil"));
}

TEST(ComparedStates, aStateThatIsNotThereGivesNothing) {
    const Folio folio = grownFolio();
    EXPECT_EQ(comparedStates(folio, inked(folio, 1), {"no such digest", {}}), nullptr);
    EXPECT_EQ(comparedStates(folio, {}, {}), nullptr);
    EXPECT_FALSE(patternOf(folio, {{}, "no such pencil"}));
}

}  // namespace
}  // namespace coutil
