#include "core/sheets/paper.h"

#include <cmath>
#include <set>

#include <gtest/gtest.h>

namespace coutil {
namespace {

struct Size {
    const char* name;
    double widthMm;
    double heightMm;
};

// ISO 216 and ANSI/ASME Y14.1, both from memory: Letter 8.5 x 11 in, Legal 8.5 x 14, Tabloid 11
// x 17.
TEST(Paper, knownSizesAreThoseOfTheStandards) {
    for (const Size& size :
         {Size{"A4", 210, 297}, Size{"A3", 297, 420}, Size{"A0", 841, 1189},
          Size{"Letter", 8.5 * 25.4, 11 * 25.4}, Size{"Legal", 8.5 * 25.4, 14 * 25.4},
          Size{"Tabloid", 11 * 25.4, 17 * 25.4}}) {
        const auto paper = paperNamed(size.name);
        ASSERT_TRUE(paper) << size.name;
        EXPECT_EQ(paper->widthUm, std::llround(size.widthMm * 1000)) << size.name;
        EXPECT_EQ(paper->heightUm, std::llround(size.heightMm * 1000)) << size.name;
        EXPECT_FALSE(paper->isRoll);
    }
}

TEST(Paper, rollsAreAsWideAsTheirNamesAndNoLongerThanAPageMayBe) {
    int rolls = 0;
    for (const Paper& paper : knownPapers()) {
        if (!paper.isRoll || paper.isOnePage) continue;
        ++rolls;
        EXPECT_EQ(paper.name, "Roll " + std::to_string(paper.widthUm / 1000));
        EXPECT_EQ(paper.heightUm, 5'080'000);  // 14,400 points of 1/72 in, an old reader's limit
    }
    EXPECT_EQ(rolls, 3);
}

TEST(Paper, namesAreFoundInAnyCaseAndEachOnce) {
    std::set<std::string> names;
    for (const Paper& paper : knownPapers()) {
        EXPECT_TRUE(names.insert(paper.name).second) << paper.name;
        EXPECT_EQ(paperNamed(paper.name).value, paper);
    }
    EXPECT_EQ(paperNamed("lETTER")->name, "Letter");
    EXPECT_EQ(paperNamed("roll914")->widthUm, 914'000);
}

TEST(Paper, ownSizesAreReadInMillimetres) {
    EXPECT_EQ(paperNamed("200x300")->widthUm, 200'000);
    EXPECT_EQ(paperNamed("200x300")->heightUm, 300'000);
    EXPECT_EQ(paperNamed("329,5 X 483.1 mm")->widthUm, 329'500);
    EXPECT_EQ(paperNamed("329,5 X 483.1 mm")->heightUm, 483'100);
}

TEST(Paper, whatIsNoPaperIsRefusedByName) {
    for (const char* name : {"", "A17", "x", "200x", "x300", "200x300x400", "-200x300", "nanx300",
                             "200*300", "1e5x300", "infx200"}) {
        const auto paper = paperNamed(name);
        ASSERT_FALSE(paper) << name;
        ASSERT_EQ(paper.problems.size(), 1U);
        EXPECT_TRUE(isError(paper.problems[0]));
        EXPECT_EQ(paper.problems[0].detail, name);
    }
    EXPECT_EQ(paperNamed("A17").problems[0].code, ProblemCode::paperUnknown);
    EXPECT_EQ(paperNamed("100x300").problems[0].code, ProblemCode::paperTooSmall);
    EXPECT_EQ(paperNamed("-200x300").problems[0].code, ProblemCode::paperTooSmall);
    EXPECT_EQ(paperNamed("914x5081").problems[0].code, ProblemCode::sheetOptionOutOfRange);
}

}  // namespace
}  // namespace coutil
