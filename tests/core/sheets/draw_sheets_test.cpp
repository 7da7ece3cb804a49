#include <set>

#include <gtest/gtest.h>

#include "core/sheets/sheet_drawing.h"
#include "core/sheets/sheet_grid.h"
#include "core/sheets/sheet_lettering.h"
#include "tests/core/sheets/made_up_tracings.h"
#include "tests/core/sheets/made_up_words.h"

namespace coutil {
namespace {

// Whether the words stand on the sheet, broken into lines or not.
bool says(const SheetDrawing& drawing, const std::string& text) {
    std::string all;
    for (const auto& lettering : drawing.letterings) all += lettering.text + ' ';
    return all.find(text) != std::string::npos;
}

std::vector<SheetDrawing> corsetOn(const char* paper, SheetPlan* planOut = nullptr) {
    SheetOptions options;
    options.paper = *paperNamed(paper);
    const auto tracings = madeUpCorset();
    const auto plan = planSheets(tracings, options);
    if (planOut != nullptr) *planOut = *plan;
    return drawSheets(*plan, tracings, madeUpWords());
}

TEST(DrawSheets, firstPageThenOneForEachSheetNumberedThrough) {
    SheetPlan plan;
    const auto drawings = corsetOn("A4", &plan);
    ASSERT_EQ(drawings.size(), plan.sheets.size() + 1);
    const auto all = std::to_string(drawings.size());
    EXPECT_EQ(drawings[0].name, "first");
    EXPECT_TRUE(says(drawings[0], "page 1 of " + all));
    EXPECT_TRUE(says(drawings[0], "100 mm"));
    EXPECT_TRUE(says(drawings[0], "4 in"));
    for (std::size_t i = 1; i < drawings.size(); ++i) {
        EXPECT_EQ(drawings[i].name, nameOf(plan.sheets[i - 1]));
        EXPECT_TRUE(says(drawings[i], "page " + std::to_string(i + 1) + " of " + all));
        EXPECT_TRUE(says(drawings[i], "Corset of the second act"));
        EXPECT_TRUE(says(drawings[0], drawings[i].name)) << "not on the map";
    }
}

TEST(DrawSheets, neighboursAreNamedAndJoinsNumberedOnBothSides) {
    SheetPlan plan;
    const auto drawings = corsetOn("A4", &plan);
    std::map<std::string, int> halves;
    for (std::size_t i = 1; i < drawings.size(); ++i) {
        for (const Sheet& other : plan.sheets) {
            const Sheet& sheet = plan.sheets[i - 1];
            const int apart =
                std::abs(other.row - sheet.row) + std::abs(other.column - sheet.column);
            if (apart != 1) continue;
            EXPECT_TRUE(says(drawings[i], nameOf(other)));
        }
        for (const auto& lettering : drawings[i].letterings) {
            const bool isNumber =
                lettering.text.find_first_not_of("0123456789") == std::string::npos;
            if (isNumber && lettering.ink == SheetInk::mark) ++halves[lettering.text];
        }
    }
    ASSERT_FALSE(halves.empty());
    for (const auto& [number, count] : halves) EXPECT_EQ(count, 2) << "mark " << number;
}

TEST(DrawSheets, everyPanelIsLabelledWithWhatToCut) {
    const auto drawings = corsetOn("A0");
    ASSERT_EQ(drawings.size(), 1U);
    for (int panel = 1; panel <= 6; ++panel) {
        EXPECT_TRUE(says(drawings[0], "panel " + std::to_string(panel)));
    }
    EXPECT_TRUE(says(drawings[0], "mirrored"));
    EXPECT_TRUE(says(drawings[0], "fold"));
    EXPECT_TRUE(says(drawings[0], "revision 3"));
}

// On large paper square, bars and words lie beside the pattern, clear of it, and say to measure
// before cutting; on small paper they have a page of their own, to be measured before the rest.
TEST(DrawSheets, largePaperCarriesTheFirstPageBesideThePattern) {
    for (const char* paper : {"A0", "Roll 610", "Roll 914", "Roll 1067"}) {
        for (const auto& tracings : {madeUpCorset(), madeUpDress()}) {
            SheetOptions options;
            options.paper = *paperNamed(paper);
            options.scaleX = 1.002;
            const auto plan = planSheets(tracings, options);
            ASSERT_TRUE(plan && plan->firstBlock) << paper;
            const Box& box = plan->firstBlock->box;
            const Box frame = frameOf(*plan, plan->sheets[plan->firstBlock->sheet]);
            EXPECT_TRUE((box.lowest.array() >= frame.lowest.array()).all()) << paper;
            EXPECT_TRUE((box.highest.array() <= frame.highest.array()).all()) << paper;
            for (const auto& shape : shapesOn(*plan, tracings)) EXPECT_FALSE(meets(shape, box));
            const auto drawings = drawSheets(*plan, tracings, madeUpWords());
            ASSERT_EQ(drawings.size(), plan->sheets.size()) << paper;
            const bool isOnlyPage = drawings.size() == 1;
            EXPECT_EQ(says(drawings[0], madeUpWords().measureBeforeCutting), isOnlyPage);
            EXPECT_EQ(says(drawings[0], madeUpWords().joinHint), !isOnlyPage);
            EXPECT_EQ(says(drawings[0], madeUpWords().measureFirst), !isOnlyPage);
            EXPECT_TRUE(says(drawings[0], "page 1 of " + std::to_string(drawings.size())));
            EXPECT_TRUE(says(drawings[0], "100 mm"));
        }
    }
    for (const char* paper : {"A4", "Letter", "Legal", "A3", "Tabloid"}) {
        SheetOptions options;
        options.paper = *paperNamed(paper);
        const auto plan = planSheets(madeUpCorset(), options);
        EXPECT_FALSE(plan->firstBlock);
        const auto drawings = drawSheets(*plan, madeUpCorset(), madeUpWords());
        EXPECT_TRUE(says(drawings[0], madeUpWords().measureFirst));
        EXPECT_FALSE(says(drawings[0], "panel 1"));
    }
}

TEST(SheetPlan, everySheetHasOnePageAndTheFirstBlockComesFirst) {
    SheetPlan plan;
    plan.sheets = {{0, 0}, {0, 1}, {1, 0}, {1, 1}};
    for (const int carrier : {-1, 0, 2, 3}) {
        plan.firstBlock.reset();
        if (carrier >= 0) plan.firstBlock = {static_cast<std::size_t>(carrier), {}};
        ASSERT_EQ(pagesOf(plan), carrier < 0 ? 5 : 4);
        if (carrier >= 0) {
            EXPECT_EQ(pageOfSheet(plan, static_cast<std::size_t>(carrier)), 0);
        }
        EXPECT_EQ(sheetOnPage(plan, 0).has_value(), carrier >= 0);
        for (std::size_t sheet = 0; sheet < 4; ++sheet) {
            EXPECT_EQ(sheetOnPage(plan, pageOfSheet(plan, sheet)), sheet);
        }
    }
}

// Nothing but what is clipped to the frame may reach beyond the margin; all words stay inside by
// their own estimate.
TEST(DrawSheets, firstPageHoldsAllItsWordsAndLines) {
    for (const char* paper : {"A4", "A0", "Letter", "Roll 610", "148x210", "200x200"}) {
        const auto drawings = corsetOn(paper);
        const SheetDrawing& first = drawings[0];
        const auto expectInside = [&](const Point& p, const std::string& what) {
            EXPECT_GE(p.x(), first.marginMm) << paper << " " << what;
            EXPECT_GE(p.y(), first.marginMm) << paper << " " << what;
            EXPECT_LE(p.x(), first.widthMm - first.marginMm) << paper << " " << what;
            EXPECT_LE(p.y(), first.heightMm - first.marginMm) << paper << " " << what;
        };
        for (const auto& stroke : first.strokes) {
            expectInside(boundsOf(stroke.path).lowest, "line");
            expectInside(boundsOf(stroke.path).highest, "line");
        }
        for (const auto& lettering : first.letterings) {
            expectInside(aboutBox(lettering).lowest, lettering.text);
            expectInside(aboutBox(lettering).highest, lettering.text);
        }
    }
}

}  // namespace
}  // namespace coutil
