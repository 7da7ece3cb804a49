#include <cmath>
#include <limits>

#include <gtest/gtest.h>

#include "core/sheets/finish_plan.h"
#include "core/sheets/pack_shelves.h"
#include "core/sheets/sheet_grid.h"
#include "tests/core/sheets/made_up_tracings.h"

namespace coutil {
namespace {

constexpr double kQuickEffort = 0.05;

bool isSame(const SheetPlan& a, const SheetPlan& b) {
    if (a.sheets != b.sheets || a.placed.size() != b.placed.size()) return false;
    for (std::size_t i = 0; i < a.placed.size(); ++i) {
        if (a.placed[i].tracing != b.placed[i].tracing) return false;
        if (!(a.placed[i].placement == b.placed[i].placement)) return false;
    }
    return true;
}

// Judged by distances between outlines, not by the cells the search works with.
void expectApart(const SheetPlan& plan, const std::vector<Tracing>& tracings) {
    const auto shapes = shapesOn(plan, tracings);
    for (std::size_t i = 0; i < shapes.size(); ++i) {
        for (std::size_t k = 0; k < i; ++k) {
            EXPECT_GE(distanceMm(shapes[i], shapes[k], 5), 2.0) << i << " and " << k;
        }
    }
}

TEST(SheetOptions, unsoundOnesAreNamedWithTheirLimits) {
    const auto problemOf = [](auto change) {
        SheetOptions options;
        change(options);
        const auto problems = checkSheetOptions(options);
        EXPECT_FALSE(planSheets(madeUpCorset(), options).hasValue());
        return problems.empty() ? Problem{} : problems.front();
    };
    EXPECT_TRUE(checkSheetOptions({}).empty());
    const auto nan = std::numeric_limits<double>::quiet_NaN();
    for (const double bad : {0.969, 1.031, 0.0, -1.0, nan}) {
        const Problem problem = problemOf([&](auto& o) { o.scaleX = bad; });
        EXPECT_EQ(problem.code, ProblemCode::sheetOptionOutOfRange);
        EXPECT_EQ(problem.subject, "scale-x");
        EXPECT_EQ(problem.figures.at(1).value, 0.97);
        EXPECT_EQ(problem.figures.at(2).value, 1.03);
    }
    EXPECT_EQ(problemOf([](auto& o) { o.scaleY = 1.04; }).subject, "scale-y");
    EXPECT_EQ(problemOf([](auto& o) { o.marginUm = -1; }).subject, "margin");
    EXPECT_EQ(problemOf([](auto& o) { o.overlapUm = 50'000; }).subject, "overlap");
    EXPECT_EQ(problemOf([](auto& o) { o.overlapUm = -1; }).subject, "overlap");
    EXPECT_EQ(problemOf([](auto& o) { o.marginUm = 48'000; }).code, ProblemCode::paperTooSmall);
    SheetOptions atLimits;
    atLimits.scaleX = 0.97;
    atLimits.scaleY = 1.03;
    EXPECT_TRUE(checkSheetOptions(atLimits).empty());
}

TEST(PlanSheets, laysEveryPieceOnceAndKeepsThemApart) {
    const auto tracings = madeUpDress();
    const auto plan = planSheets(tracings, {});
    ASSERT_TRUE(plan);
    ASSERT_EQ(plan->placed.size(), tracings.size());
    for (std::size_t i = 0; i < tracings.size(); ++i) EXPECT_EQ(plan->placed[i].tracing, i);
    expectApart(*plan, tracings);
}

TEST(PlanSheets, twinsAreMirroredAndOnlyOfPairs) {
    const auto tracings = madeUpCorset(5);  // the first lies on the fold: no pair
    SheetOptions options;
    options.mirroredToo = true;
    const auto plan = planSheets(tracings, options);
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->placed.size(), 9U);
    EXPECT_EQ(std::count_if(plan->placed.begin(), plan->placed.end(),
                            [](const auto& piece) { return piece.placement.isMirrored; }),
              4);
    expectApart(*plan, tracings);
}

TEST(PlanSheets, takesWhicheverWayNeedsFewer) {
    for (const auto& tracings : {madeUpCorset(4), madeUpCorset(6), madeUpDress()}) {
        std::size_t least = 1000;
        for (const auto way : {Orientation::portrait, Orientation::landscape}) {
            SheetOptions options;
            options.orientation = way;
            const auto plan = planSheets(tracings, options);
            ASSERT_TRUE(plan);
            EXPECT_EQ(plan->isLandscape, way == Orientation::landscape);
            least = std::min(least, plan->sheets.size());
        }
        EXPECT_LE(planSheets(tracings, {})->sheets.size(), least);
    }
}

TEST(PlanSheets, aRollIsCutToWhatIsOnIt) {
    SheetOptions options;
    options.paper = *paperNamed("Roll 914");
    const auto tracings = madeUpDress();
    const auto plan = planSheets(tracings, options);
    ASSERT_TRUE(plan);
    ASSERT_EQ(plan->sheets.size(), 1U);
    double top = 0;
    for (const auto& shape : shapesOn(*plan, tracings)) top = std::max(top, shape.box.highest.y());
    if (plan->firstBlock) top = std::max(top, plan->firstBlock->box.highest.y());
    const double lengthMm = static_cast<double>(plan->sheetHeightUm) / 1000;
    EXPECT_GE(lengthMm, top + 20);
    EXPECT_LE(lengthMm, top + 20 + 10.5);
    EXPECT_LE(plan->sheetHeightUm, kLongestPageUm);
}

TEST(PlanSheets, nothingToPrintNeedsNoSheet) {
    const auto plan = planSheets({}, {});
    ASSERT_TRUE(plan);
    EXPECT_TRUE(plan->sheets.empty());
    EXPECT_TRUE(planFewerSheets({}, {}, 1, 1)->sheets.empty());
}

TEST(PlanSheets, refusesMoreSheetsThanAnyoneTapes) {
    auto tracings = madeUpDress();
    for (Tracing& tracing : tracings) {
        for (Cubic& c : tracing.cutting.pieces) {
            c = {c.p0 * 40, c.p1 * 40, c.p2 * 40, c.p3 * 40};
        }
    }
    const auto plan = planSheets(tracings, {});
    ASSERT_FALSE(plan);
    EXPECT_EQ(plan.problems.at(0).code, ProblemCode::tooManySheets);
    EXPECT_GT(plan.problems[0].figures.at(0).value, 400);
    EXPECT_EQ(plan.problems[0].figures.at(1).value, 400);
}

TEST(PlanFewerSheets, theSameSeedGivesTheSamePlan) {
    const auto tracings = madeUpDress();
    const auto first = planFewerSheets(tracings, {}, 7, kQuickEffort);
    const auto second = planFewerSheets(tracings, {}, 7, kQuickEffort);
    const auto other = planFewerSheets(tracings, {}, 8, kQuickEffort);
    EXPECT_TRUE(isSame(*first, *second));
    EXPECT_FALSE(isSame(*first, *other));
}

TEST(PlanFewerSheets, isNeverWorseAndKeepsPiecesApart) {
    for (const char* paper : {"A4", "Letter", "A3"}) {
        SheetOptions options;
        options.paper = *paperNamed(paper);
        for (const auto& tracings : {madeUpCorset(5), madeUpDress()}) {
            const auto quick = planSheets(tracings, options);
            const auto fewer = planFewerSheets(tracings, options, 1, kQuickEffort);
            ASSERT_TRUE(fewer);
            EXPECT_LE(fewer->sheets.size(), quick->sheets.size());
            EXPECT_EQ(fewer->placed.size(), tracings.size());
            expectApart(*fewer, tracings);
        }
    }
}

TEST(PlanFewerSheets, stopsWhenToldAndGivesTheBestSoFar) {
    const auto tracings = madeUpDress();
    const std::size_t quick = planSheets(tracings, {})->sheets.size();
    double last = -1;
    int calls = 0;
    const auto plan = planFewerSheets(tracings, {}, 1, 50, [&](double done, int sheets) {
        EXPECT_GE(done, last);
        EXPECT_LE(done, 1);
        EXPECT_LE(sheets, static_cast<int>(quick));
        last = done;
        return ++calls < 20;
    });
    ASSERT_TRUE(plan);
    EXPECT_EQ(calls, 20);
    EXPECT_LT(last, 0.1);
    EXPECT_LE(plan->sheets.size(), quick);
    expectApart(*plan, tracings);
}

}  // namespace
}  // namespace coutil
