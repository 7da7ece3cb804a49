// What the tables of figures say. Revision 2 takes in 4 mm across seam 2-3 at the waist mark, on
// both sides of the body: the waist is 8 mm less (an amount is the whole across the seam on each
// side named: the definition of the alteration).
#include "ui/comparing/compared_figures.h"

#include <algorithm>
#include <stdexcept>

#include <gtest/gtest.h>

#include "tests/ui/timeline/grown_garment.h"
#include "ui/comparing/figure_text.h"
#include "ui/words/trade_words.h"

namespace coutil {
namespace {

const QString kMinus(QChar(0x2212));

class ComparedFigures : public testing::Test {
  protected:
    void compare(int a, int b) {
        states = comparedStates(folio, {digestOf(folio, a), {}}, {digestOf(folio, b), {}});
        ASSERT_NE(states, nullptr);
        tables = comparedFigures(*states, LengthUnit::centimetre);
    }
    const FigureRow& row(std::size_t table, const QString& name) {
        const auto& rows = tables.at(table).rows;
        const auto found = std::ranges::find(rows, name, &FigureRow::name);
        if (found == rows.end()) throw std::runtime_error(name.toStdString());
        return *found;
    }

    Folio folio = grownFolio();
    std::shared_ptr<const ComparedStates> states;
    std::vector<FigureTable> tables;
};

TEST_F(ComparedFigures, girthsAndSeamsSayWhatWasTakenIn) {
    compare(1, 2);
    ASSERT_EQ(tables.size(), 5U);
    EXPECT_EQ(row(0, "waist").figures.back(), kMinus + "0.80");
    const FigureRow& seam = row(1, "2-3");
    const auto waist = tables[1].columns.indexOf("waist") - 1;
    ASSERT_GE(waist, 0);
    EXPECT_EQ(seam.figures[waist], kMinus + "0.40");
    EXPECT_FALSE(seam.isUnchanged);
    EXPECT_TRUE(row(1, "1-2").isUnchanged);
    EXPECT_EQ(seam.figures[tables[1].columns.indexOf("most") - 1], kMinus + "0.40");
}

TEST_F(ComparedFigures, everyRowHasAsManyFiguresAsItsTableHasColumns) {
    compare(1, 3);
    for (const FigureTable& table : tables) {
        for (const FigureRow& each : table.rows) {
            EXPECT_EQ(each.figures.size() + 1, table.columns.size()) << table.title.toStdString();
        }
    }
}

TEST_F(ComparedFigures, theSameRevisionHasOnlyUnchangedRows) {
    compare(2, 2);
    for (const FigureTable& table : tables) {
        for (const FigureRow& each : table.rows) {
            EXPECT_TRUE(each.isUnchanged) << each.name.toStdString();
        }
    }
}

TEST_F(ComparedFigures, placesLieOnThePanelTheySpeakOf) {
    compare(1, 2);
    const ComparedLayout layout = comparedLayout(*states, 1);
    const FigureRow& seam = row(1, "2-3");
    ASSERT_GE(seam.place.pair, 0);
    const auto spot = spotOf(seam.place, layout);
    ASSERT_TRUE(spot);
    const PairOnTable& pair = layout.pairs[static_cast<std::size_t>(seam.place.pair)];
    EXPECT_LT(closestOn(pair.a, {spot->x(), spot->y()}).distanceMm, 1e-6);
}

TEST_F(ComparedFigures, alterationsBetweenAreToldWithDateAndReason) {
    compare(1, 3);
    const QStringList forward = alterationsTold(folio, *states, LengthUnit::millimetre);
    ASSERT_EQ(forward.size(), 2);
    EXPECT_TRUE(forward[0].contains("2-3"));
    EXPECT_TRUE(forward[0].contains("revision 2"));
    EXPECT_TRUE(forward[0].endsWith(": loose"));
    EXPECT_TRUE(forward[1].contains("revision 3"));
    compare(3, 4);  // another branch: what A has is given up
    const QStringList across = alterationsTold(folio, *states, LengthUnit::millimetre);
    ASSERT_EQ(across.size(), 3);
    EXPECT_TRUE(across[0].startsWith("only in A: "));
    EXPECT_TRUE(across[2].startsWith("only in B: "));
}

TEST(FigureText, signsAndMissingFigures) {
    using enum LengthUnit;
    EXPECT_EQ(differenceText(4.0, millimetre), "+4.0");
    EXPECT_EQ(differenceText(-4.0, centimetre), kMinus + "0.40");
    EXPECT_EQ(differenceText(0.01, millimetre), "0");
    EXPECT_EQ(differenceText(-25.4, inch), kMinus + "1");
    EXPECT_EQ(differenceText({}, millimetre), QString(QChar(0x2013)));
    EXPECT_EQ(placeText(-35, millimetre), kMinus + "35 mm");
    EXPECT_EQ(squareText(1234.0, centimetre), "12.3");
    EXPECT_EQ(squareDifferenceText(-645.16, inch), kMinus + "1.0");
}

}  // namespace
}  // namespace coutil
