// The river from measurements to tracings: each stage's value, or its problems and nothing after.
#include "core/revision/draft_garment.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "core/block/draft_corset.h"
#include "core/pattern/every_check.h"
#include "tests/bodies/ansur_bodies.h"

namespace coutil {
namespace {

MeasurementSet someone() { return bodies::ansurBodies().at(17); }

TEST(DraftGarment, isTheStagesOneAfterTheOther) {
    const Style style;
    const auto garment = draftGarment(someone(), style);
    const auto body = completeBody(someone());
    ASSERT_TRUE(body.hasValue());
    const auto pattern = draftCorset(*body, style);
    ASSERT_TRUE(pattern.hasValue());
    EXPECT_EQ(garment.body, body.value);
    EXPECT_EQ(garment.pattern, pattern.value);
    ASSERT_TRUE(garment.tracings.has_value());
    EXPECT_EQ(garment.tracings->size(), pattern->panels.size());
    EXPECT_TRUE(std::none_of(garment.problems.begin(), garment.problems.end(), isError));
}

// The checks that are always on are part of the outcome, each once.
TEST(DraftGarment, isCheckedAsItIsDrafted) {
    Style style;
    style.easeMm[LevelId::waist] = -100;
    const auto garment = draftGarment(someone(), style);
    ASSERT_TRUE(garment.pattern);
    for (const Problem& found : everyCheck(*garment.pattern))
        EXPECT_EQ(std::count(garment.problems.begin(), garment.problems.end(), found), 1);
    EXPECT_EQ(std::ranges::count(garment.problems, ProblemCode::reductionLarge, &Problem::code), 1);
}

TEST(DraftGarment, stopsWhereABodyIsMissing) {
    const auto garment = draftGarment(MeasurementSet{}, Style{});
    EXPECT_FALSE(garment.body.has_value());
    EXPECT_FALSE(garment.pattern.has_value());
    EXPECT_FALSE(garment.tracings.has_value());
    ASSERT_FALSE(garment.problems.empty());
    EXPECT_EQ(garment.problems.front().code, ProblemCode::measurementMissing);
}

TEST(DraftGarment, stopsWhereAStyleIsImpossible) {
    Style style;
    style.panelsPerHalf = 9;
    const auto garment = draftGarment(someone(), style);
    EXPECT_TRUE(garment.body.has_value());
    EXPECT_FALSE(garment.pattern.has_value());
    EXPECT_FALSE(garment.tracings.has_value());
    EXPECT_TRUE(std::any_of(garment.problems.begin(), garment.problems.end(), isError));
}

TEST(DraftGarment, theSameTwice) {
    const auto once = draftGarment(someone(), Style{});
    const auto again = draftGarment(someone(), Style{});
    EXPECT_EQ(once.pattern, again.pattern);
    ASSERT_TRUE(once.tracings && again.tracings);
    for (std::size_t k = 0; k < once.tracings->size(); ++k) {
        EXPECT_EQ(once.tracings->at(k).cutting, again.tracings->at(k).cutting);
    }
}

}  // namespace
}  // namespace coutil
