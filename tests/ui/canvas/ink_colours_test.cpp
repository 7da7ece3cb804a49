// Inks of revisions can be seen and told apart, in both themes and without colour.
#include "ui/canvas/ink_colours.h"

#include <set>

#include <gtest/gtest.h>

#include "core/revision/ink_line.h"
#include "ui/canvas/table_colours.h"

namespace coutil {
namespace {

// WCAG 2.1, 1.4.11: 3 : 1 for lines.
TEST(InkColours, everyInkIsSeenOnPaperAndTintsOfBothThemes) {
    for (const bool isDark : {false, true}) {
        const TableColours& table = tableColours(isDark);
        for (int number = 1; number <= 42; ++number) {
            const QColor ink = inkLook(number, isDark).colour;
            EXPECT_GE(contrast(ink, table.paper), 3) << isDark << " " << number;
            for (const QColor& tint : table.tints) {
                EXPECT_GE(contrast(ink, tint), 3) << isDark << " " << number;
            }
        }
    }
    for (int number = 1; number <= 6; ++number) {
        EXPECT_GE(contrast(inkLookOnPaper(number).colour, Qt::white), 3) << number;
    }
}

TEST(InkColours, neighboursDifferInColourAndInDash) {
    for (int number = 1; number < 50; ++number) {
        EXPECT_NE(inkLook(number, false).dash, inkLook(number + 1, false).dash) << number;
        EXPECT_NE(inkLook(number, false).colour, inkLook(number + 1, false).colour) << number;
    }
}

TEST(InkColours, fortyTwoRevisionsPassBeforeAPairComesAgain) {
    std::set<std::pair<std::string_view, std::vector<double>>> seen;
    for (int number = 1; number <= 42; ++number) {
        const InkLine line = inkLineOf(number);
        EXPECT_TRUE(seen.insert({line.onPaper, line.dashPens}).second) << number;
    }
    EXPECT_EQ(inkLineOf(43).dashPens, inkLineOf(1).dashPens);
}

TEST(InkColours, hueStaysTheSameInEveryTheme) {
    for (int number = 1; number <= 6; ++number) {
        const QColor named(QString::fromLatin1(kInkHues[inkLineOf(number).hue].data(), 7));
        for (const QColor& ink : {inkLook(number, false).colour, inkLook(number, true).colour}) {
            const int apart = std::abs(ink.hslHue() - named.hslHue());
            EXPECT_LE(std::min(apart, 360 - apart), 12) << number;
        }
    }
}

TEST(InkColours, penHasColourDashAndWidth) {
    const QPen dashed = inkPen(inkLook(2, false), 1.5);
    EXPECT_EQ(dashed.color(), inkLook(2, false).colour);
    EXPECT_EQ(dashed.dashPattern(), inkLook(2, false).dash);
    EXPECT_DOUBLE_EQ(dashed.widthF(), 1.5);
    EXPECT_EQ(inkPen(inkLook(1, false), 1).style(), Qt::SolidLine);
}

}  // namespace
}  // namespace coutil
