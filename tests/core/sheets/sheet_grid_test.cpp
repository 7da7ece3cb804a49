#include "core/sheets/sheet_grid.h"

#include <cmath>

#include <gtest/gtest.h>

#include "core/sheets/seeded_random.h"
#include "tests/core/sheets/made_up_tracings.h"

namespace coutil {
namespace {

TEST(SheetName, rowsAreLettersAndColumnsNumbers) {
    EXPECT_EQ(nameOf({0, 0}), "A1");
    EXPECT_EQ(nameOf({1, 2}), "B3");
    EXPECT_EQ(nameOf({25, 9}), "Z10");
    EXPECT_EQ(nameOf({26, 0}), "AA1");
    EXPECT_EQ(nameOf({27, 0}), "AB1");
    EXPECT_EQ(nameOf({26 + 26 * 26, 0}), "AAA1");
}

// usable = page - 2 margins, step = usable - overlap, n = ceil((L - overlap) / step): the
// arithmetic of tiling, exact.
TEST(SheetGrid, stepsAndFramesAreThePaperLessMarginsAndOverlap) {
    const SheetPlan plan = emptyPlan({}, false);
    EXPECT_EQ(plan.frameXUm, 190'000);
    EXPECT_EQ(plan.frameYUm, 277'000);
    EXPECT_EQ(plan.stepXUm, 180'000);
    EXPECT_EQ(plan.stepYUm, 267'000);
    const SheetPlan turned = emptyPlan({}, true);
    EXPECT_EQ(turned.frameXUm, 277'000);
    EXPECT_EQ(turned.stepYUm, 180'000);
}

TEST(SheetGrid, factorsBelongToThePaperNotToThePage) {
    SheetOptions options;
    options.scaleX = 1.02;
    options.scaleY = 0.98;
    EXPECT_EQ(correctionOf(emptyPlan(options, false)).x, 1.02);
    EXPECT_EQ(correctionOf(emptyPlan(options, true)).x, 0.98);
}

// Overlap on paper: never less than asked, at most 0.0021 mm more; the frame fills the margins'
// inside within 2 um and never reaches over.
TEST(SheetGrid, factorsKeepOverlapAndMarginsOnPaper) {
    for (const double factor : {0.97, 0.9871, 0.999, 1.0, 1.0123, 1.03}) {
        SheetOptions options;
        options.scaleX = factor;
        options.scaleY = 2 - factor;
        SheetPlan plan = emptyPlan(options, false);
        plan.rows = 2;
        plan.columns = 2;
        const Box right = frameOf(plan, {1, 1});
        const Point corner = onPaper(plan, {1, 0}, right.lowest);
        EXPECT_GE(200 - corner.x(), 10 - 1e-9) << factor;
        EXPECT_LE(200 - corner.x(), 10.0031) << factor;
        const Point far = onPaper(plan, {1, 1}, right.highest);
        EXPECT_LE(far.x(), 200 + 1e-9);
        EXPECT_GE(far.x(), 200 - 0.002);
        EXPECT_LE(far.y(), 287 + 1e-9);
        EXPECT_GE(far.y(), 287 - 0.002);
    }
}

OutlineShape rectangle(double left, double bottom, double right, double top) {
    return shapeOf(std::vector<Point>{{left, bottom}, {right, bottom}, {right, top}, {left, top}});
}

std::vector<std::string> sheetsUnder(const std::vector<OutlineShape>& shapes) {
    SheetPlan plan = emptyPlan({}, false);
    keepSheetsUnder(shapes, plan);
    std::vector<std::string> names;
    for (const Sheet& sheet : plan.sheets) names.push_back(nameOf(sheet));
    return names;
}

// A4 shows 190 x 277 every 180 x 267.
TEST(SheetGrid, aPieceThatFitsOneSheetNeedsOne) {
    EXPECT_EQ(sheetsUnder({rectangle(1, 1, 189, 276)}), std::vector<std::string>{"A1"});
    EXPECT_EQ(sheetsUnder({rectangle(181, 1, 369, 276)}), std::vector<std::string>{"A2"});
}

TEST(SheetGrid, halfAPenBeyondTheEdgeNeedsTheNextSheet) {
    EXPECT_EQ(sheetsUnder({rectangle(1, 1, 189.9, 276)}), (std::vector<std::string>{"A1", "A2"}));
}

TEST(SheetGrid, sheetsWithNothingOnThemAreLeftOutByTheRealOutline) {
    // An L whose box touches four sheets; the one in its corner stays empty.
    const OutlineShape corner =
        shapeOf(std::vector<Point>{{5, 5}, {360, 5}, {360, 100}, {100, 100}, {100, 500}, {5, 500}});
    EXPECT_EQ(sheetsUnder({corner}), (std::vector<std::string>{"A1", "B1", "B2"}));
}

TEST(SheetGrid, aPieceInAnOverlapNeedsOneOfTheTwo) {
    EXPECT_EQ(sheetsUnder({rectangle(182, 50, 188, 60)}).size(), 1U);
    EXPECT_EQ(sheetsUnder({rectangle(182, 269, 188, 275)}).size(), 1U);
}

class Covers : public testing::TestWithParam<const char*> {};

// Property: every point of every line lies in the frame of a kept sheet, and what that sheet puts
// on paper leads back to the same place to 1 um.
TEST_P(Covers, everyPointOfEveryLine) {
    SheetOptions options;
    options.paper = *paperNamed(GetParam());
    options.scaleX = 1.0037;
    options.scaleY = 0.9941;
    options.marginUm = 7'300;
    options.overlapUm = 12'345;
    options.mirroredToo = true;
    SeededRandom random(4);
    for (const auto& tracings : {madeUpCorset(7), madeUpDress()}) {
        const auto plan = planSheets(tracings, options);
        ASSERT_TRUE(plan);
        const Correction factor = correctionOf(*plan);
        for (const PlacedTracing& piece : plan->placed) {
            const Path line = placed(tracings[piece.tracing].cutting, piece.placement);
            for (int i = 0; i < 400; ++i) {
                const auto at =
                    static_cast<std::size_t>(random.below(static_cast<int>(line.pieces.size())));
                const Point p = pointAt(line.pieces[at], random.part());
                int shown = 0;
                for (const Sheet& sheet : plan->sheets) {
                    const Box frame = frameOf(*plan, sheet);
                    if ((p.array() < frame.lowest.array()).any() ||
                        (p.array() > frame.highest.array()).any()) {
                        continue;
                    }
                    ++shown;
                    const Point paper = onPaper(*plan, sheet, p);
                    const Vector inFrame(paper.x() - 7.3, paper.y() - 7.3);
                    // Steps from the grid's own whole micrometres, not from frameOf().
                    const double left = static_cast<double>(sheet.column * plan->stepXUm) / 1000;
                    const double low =
                        static_cast<double>((plan->rows - 1 - sheet.row) * plan->stepYUm) / 1000;
                    EXPECT_NEAR(left + inFrame.x() / factor.x, p.x(), 0.001);
                    EXPECT_NEAR(low + inFrame.y() / factor.y, p.y(), 0.001);
                }
                ASSERT_GT(shown, 0) << p.transpose();
                ASSERT_LE(shown, 4);
            }
        }
    }
}

INSTANTIATE_TEST_SUITE_P(papers, Covers,
                         testing::Values("A4", "A3", "A0", "Letter", "Legal", "Tabloid", "Roll 610",
                                         "Roll 914", "150x260"));

}  // namespace
}  // namespace coutil
