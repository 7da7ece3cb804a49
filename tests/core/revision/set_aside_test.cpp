#include "core/revision/set_aside.h"

#include <gtest/gtest.h>

namespace coutil {
namespace {

Problem problem(ProblemCode code, Severity severity, std::string subject, std::string panel) {
    return {.code = code,
            .severity = severity,
            .subject = std::move(subject),
            .panel = std::move(panel)};
}

TEST(SetAside, notesAndWarningsOfTheListAreParted) {
    const auto kink = problem(ProblemCode::kinkInCurve, Severity::warning, "top", "2");
    const auto curved = problem(ProblemCode::seamTooCurved, Severity::note, "2-3", "3");
    const auto parted = partedBy({setAsideOf(kink, "the lace covers it")}, {kink, curved});
    EXPECT_EQ(parted.setAside, std::vector{kink});
    EXPECT_EQ(parted.standing, std::vector{curved});
}

TEST(SetAside, anErrorStandsWhateverTheListSays) {
    const auto narrow = problem(ProblemCode::panelTooNarrow, Severity::error, "waist", "2");
    EXPECT_FALSE(canBeSetAside(narrow));
    const auto parted = partedBy({setAsideOf(narrow, "I want it so")}, {narrow});
    EXPECT_TRUE(parted.setAside.empty());
    EXPECT_EQ(parted.standing.size(), 1U);
}

TEST(SetAside, anotherPlaceStands) {
    const auto here = problem(ProblemCode::kinkInCurve, Severity::warning, "top", "2");
    const auto there = problem(ProblemCode::kinkInCurve, Severity::warning, "top", "3");
    const auto parted = partedBy({setAsideOf(here, "")}, {there, here, there});
    EXPECT_EQ(parted.standing, (std::vector{there, there}));
    EXPECT_EQ(parted.setAside, std::vector{here});
}

}  // namespace
}  // namespace coutil
