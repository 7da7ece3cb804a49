// Every key of core that people meet has a name.
#include "ui/words/trade_words.h"

#include <set>

#include <gtest/gtest.h>

namespace coutil {
namespace {

TEST(TradeWords, everyMeasurementHasATermAndAWayToTakeIt) {
    std::set<QString> terms;
    std::set<QString> ways;
    for (const MeasurementInfo& info : measurementCatalogue()) {
        const std::string key(info.key);
        const QString term = measurementTerm(info.id);
        EXPECT_GE(term.size(), 5) << key;
        EXPECT_FALSE(term.contains('_')) << key;
        EXPECT_TRUE(term[0].isUpper()) << key;
        EXPECT_TRUE(terms.insert(term).second) << key;
        const QString how = measurementHow(info.id);
        EXPECT_GT(how.size(), 40) << key;
        EXPECT_TRUE(how.endsWith('.')) << key;
        EXPECT_FALSE(how.contains("  ")) << key;
        EXPECT_TRUE(ways.insert(how).second) << key;
    }
    EXPECT_EQ(terms.size(), 26U);
}

TEST(TradeWords, levelsHaveNamesAndTheMakersOwnPassThrough) {
    std::set<QString> names;
    for (const LevelId level : kAllLevels) {
        const std::string key(keyOf(level));
        EXPECT_FALSE(levelName(key).contains('_')) << key;
        EXPECT_TRUE(names.insert(levelName(key)).second) << key;
    }
    EXPECT_EQ(levelName("Rippenbogen"), "Rippenbogen");
}

TEST(TradeWords, edgesAreCalledByTheirSeams) {
    EXPECT_EQ(edgeName("seam 2-3"), "seam 2-3");
    EXPECT_EQ(edgeName("top"), "top edge");
    EXPECT_EQ(edgeName("centre back"), "centre back");
    EXPECT_EQ(edgeName("something else"), "something else");
}

TEST(TradeWords, lengthsStandInTheMakersUnit) {
    const QString space(QChar(QChar::Nbsp));
    EXPECT_EQ(lengthText(325, LengthUnit::centimetre), "32.5" + space + "cm");
    EXPECT_EQ(lengthText(37.75 * 25.4, LengthUnit::inch), "37 3/4" + space + "in");
    EXPECT_EQ(lengthText(12.3, LengthUnit::millimetre), "12.3" + space + "mm");
}

TEST(TradeWords, styleEntriesAreNamedDownToTheLevel) {
    EXPECT_EQ(styleTerm("lacing_gap"), "Lacing gap");
    EXPECT_EQ(styleTerm("ease.under_bust"), "Ease: under-bust");
    EXPECT_EQ(styleTerm("top_edge.at_seam.2-3"), "Height at a seam: 2-3");
    EXPECT_TRUE(styleTerm("/home/a/b.json").isEmpty());
    EXPECT_TRUE(styleTerm("").isEmpty());
}

}  // namespace
}  // namespace coutil
