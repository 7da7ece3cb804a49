// Everything on one page: nothing lost, nothing over another, no more paper than that wants.
#include <gtest/gtest.h>

#include "core/geometry/tolerances.h"
#include "core/sheets/outline_shape.h"
#include "core/sheets/sheet_drawing.h"
#include "core/sheets/sheet_grid.h"
#include "tests/core/sheets/made_up_tracings.h"
#include "tests/core/sheets/made_up_words.h"

namespace coutil {
namespace {

SheetPlan planned(const std::vector<Tracing>& tracings, SheetOptions options = {}) {
    options.paper = onePage();
    auto plan = planSheets(tracings, options);
    EXPECT_TRUE(plan);
    return plan ? *plan : SheetPlan();
}

void expectSound(const SheetPlan& plan, const std::vector<Tracing>& tracings) {
    ASSERT_EQ(pagesOf(plan), 1);
    ASSERT_EQ(plan.sheets.size(), 1U);
    ASSERT_TRUE(plan.firstBlock);
    EXPECT_EQ(plan.placed.size(), tracings.size());
    const Box frame = frameOf(plan, plan.sheets.front());
    const auto shapes = shapesOn(plan, tracings);
    for (std::size_t i = 0; i < shapes.size(); ++i) {
        EXPECT_GE(shapes[i].box.lowest.minCoeff(), 0);
        EXPECT_LE(shapes[i].box.highest.x(), frame.highest.x());
        EXPECT_LE(shapes[i].box.highest.y(), frame.highest.y());
        for (std::size_t k = 0; k < i; ++k) {
            EXPECT_GE(distanceMm(shapes[i], shapes[k], 5), tolerance::kBetweenTracingsMm - 1e-6);
        }
        EXPECT_FALSE(meets(shapes[i], plan.firstBlock->box));
    }
    EXPECT_LE(plan.firstBlock->box.highest.x(), frame.highest.x());
    EXPECT_LE(plan.firstBlock->box.highest.y(), frame.highest.y());
}

TEST(OnePage, holdsACorsetCompactly) {
    const auto tracings = madeUpCorset();
    const SheetPlan plan = planned(tracings);
    expectSound(plan, tracings);
    double areaMm2 = 0;
    for (const Tracing& tracing : tracings) areaMm2 += std::abs(signedAreaMm2(tracing.cutting));
    const double pageMm2 = static_cast<double>(plan.sheetWidthUm) / 1000 *
                           static_cast<double>(plan.sheetHeightUm) / 1000;
    // The block with the square counts too; shelves of curved pieces fill more than 40 % (seen).
    EXPECT_GT((areaMm2 + 190 * 277) / pageMm2, 0.4);
}

TEST(OnePage, holdsADressAndItsCorrections) {
    const auto tracings = madeUpDress();
    SheetOptions options;
    options.scaleX = 1.01;
    options.scaleY = 0.99;
    options.marginUm = 0;
    const SheetPlan plan = planned(tracings, options);
    expectSound(plan, tracings);
    EXPECT_LE(plan.sheetWidthUm, kLongestPageUm);
    EXPECT_LE(plan.sheetHeightUm, kLongestPageUm);
}

TEST(OnePage, isWhatTheDrawingsAreAsLargeAs) {
    const auto tracings = madeUpCorset(3);
    const SheetPlan plan = planned(tracings);
    const auto drawings = drawSheets(plan, tracings, madeUpWords());
    ASSERT_EQ(drawings.size(), 1U);
    EXPECT_EQ(drawings[0].widthMm * 1000, static_cast<double>(plan.sheetWidthUm));
    EXPECT_EQ(drawings[0].heightMm * 1000, static_cast<double>(plan.sheetHeightUm));
    for (const SheetLettering& lettering : drawings[0].letterings) {
        EXPECT_EQ(lettering.text.find("One page"), std::string::npos) << lettering.text;
        EXPECT_EQ(lettering.text.find("A1"), std::string::npos) << "a page alone has no name";
    }
}

TEST(OnePage, theSearchForFewerSheetsLeavesItAsItIs) {
    const auto tracings = madeUpCorset(4);
    SheetOptions options;
    options.paper = onePage();
    const auto plan = planFewerSheets(tracings, options, 1, 0.1);
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->sheetWidthUm, planned(tracings).sheetWidthUm);
    expectSound(*plan, tracings);
}

}  // namespace
}  // namespace coutil
