#include "core/alterations/apply_alterations.h"

#include <gtest/gtest.h>

#include "core/alterations/whole_pattern.h"
#include "tests/core/alterations/drafted.h"

namespace coutil {
namespace {

using samples::altered;
using samples::drafted;
using samples::takeIn;

TEST(ApplyAlterations, nothingAskedNothingChanged) {
    const Pattern before = drafted();
    EXPECT_EQ(altered(before, {}), before);
    EXPECT_EQ(altered(before, {takeIn("2-3", {{0, 0}})}), before);
}

TEST(ApplyAlterations, anAmountAndItsOppositeLeaveNothing) {
    const Pattern before = drafted();
    EXPECT_EQ(altered(before, {takeIn("2-3", {{0, 9}}), takeIn("1-2", {{10, 4}}),
                               takeIn("2-3", {{0, -9}}), takeIn("1-2", {{10, -4}})}),
              before);
}

TEST(ApplyAlterations, whatDoesNotFitIsLeftOutByName) {
    const Pattern before = drafted();
    const std::vector<Alteration> alterations{takeIn("2-3", {{0, 6}}), takeIn("8-9", {{0, 6}}),
                                              takeIn("3-4", {{0, 4000}}),
                                              takeIn("3-4", {{0, 0.0 / 0.0}})};
    const AlteredPattern outcome = applyAlterations(before, alterations);
    EXPECT_EQ(outcome.leftOut, (std::vector<std::size_t>{1, 2, 3}));
    ASSERT_EQ(outcome.problems.size(), 3U);
    EXPECT_EQ(outcome.problems[0].code, ProblemCode::alterationUnfit);
    EXPECT_EQ(outcome.problems[0].detail, "8-9");
    EXPECT_EQ(outcome.problems[1].code, ProblemCode::alterationTooLarge);
    EXPECT_EQ(outcome.problems[2].code, ProblemCode::alterationBadValue);
    EXPECT_EQ(outcome.pattern, altered(before, {alterations[0]}));
}

TEST(ApplyAlterations, theCulpritThatBreaksAPanelIsNamed) {
    const Pattern before = drafted();
    const std::vector<Alteration> alterations{takeIn("2-3", {{0, 6}}), takeIn("3-4", {{0, 190}}),
                                              takeIn("4-5", {{0, 6}})};
    const AlteredPattern outcome = applyAlterations(before, alterations);
    EXPECT_EQ(outcome.leftOut, (std::vector<std::size_t>{1}));
    ASSERT_EQ(outcome.problems.size(), 1U);
    EXPECT_EQ(outcome.problems[0].code, ProblemCode::alterationBreaksPanel);
    EXPECT_EQ(outcome.problems[0].detail, "3-4");
    EXPECT_EQ(outcome.pattern, altered(before, {alterations[0], alterations[2]}));
}

TEST(ApplyAlterations, whatIsSwitchedOffIsNotApplied) {
    const Pattern before = drafted();
    Alteration off = takeIn("2-3", {{0, 6}});
    off.isOn = false;
    EXPECT_EQ(altered(before, {off}), before);
}

TEST(ApplyAlterations, aOneSidedChangeMakesThePatternWhole) {
    const Pattern before = drafted();
    const Pattern after = altered(before, {takeIn("2-3", {{0, 6}}, BodySide::left)});
    const Pattern whole = wholeOf(before);
    const Pattern both = altered(before, {takeIn("2-3", {{0, 6}})});
    ASSERT_EQ(after.panels.size(), 12U);
    for (std::size_t p = 0; p < 6; ++p) {
        EXPECT_EQ(after.panels[p].edges, both.panels[p].edges);
        EXPECT_EQ(after.panels[6 + p], whole.panels[6 + p]);
    }
}

}  // namespace
}  // namespace coutil
