// Which edge gets how much, and how corners are built.
#include "core/tracing/allowance.h"

#include <gtest/gtest.h>

#include "tests/core/tracing/plain_pattern.h"

namespace coutil {
namespace {

double allowanceOf(const AllowanceStyle& style, EdgeRole role) {
    Panel panel;
    panel.name = "3";
    return allowanceMm(style, panel, Edge{"an edge", role, {}, {}, false});
}

// Issue: "cutting line with allowance per edge (default 10 mm, 0 where bound)".
TEST(Allowance, byRole) {
    AllowanceStyle style;
    EXPECT_EQ(allowanceOf(style, EdgeRole::seam), 10);
    EXPECT_EQ(allowanceOf(style, EdgeRole::opening), 15);
    EXPECT_EQ(allowanceOf(style, EdgeRole::fold), 0);
    EXPECT_EQ(allowanceOf(style, EdgeRole::top), 0);
    EXPECT_EQ(allowanceOf(style, EdgeRole::bottom), 0);
    style.isTopBound = false;
    style.edgeMm = 12;
    EXPECT_EQ(allowanceOf(style, EdgeRole::top), 12);
    EXPECT_EQ(allowanceOf(style, EdgeRole::neck), 12);
    EXPECT_EQ(allowanceOf(style, EdgeRole::bottom), 0);
    style.isBottomBound = false;
    EXPECT_EQ(allowanceOf(style, EdgeRole::bottom), 12);
}

TEST(Allowance, ownWordOfTheMakerWinsSaveOnAFold) {
    AllowanceStyle style;
    style.byEdgeMm = {{"3/an edge", 22}, {"4/an edge", 5}};
    EXPECT_EQ(allowanceOf(style, EdgeRole::seam), 22);
    EXPECT_EQ(allowanceOf(style, EdgeRole::top), 22);
    EXPECT_EQ(allowanceOf(style, EdgeRole::fold), 0);
}

TEST(Allowance, foldedOverAllowancesAreTurnedBackAtARim) {
    using enum EdgeRole;
    EXPECT_EQ(treatmentBetween(seam, top), CornerTreatment::turnedBackOverFirst);
    EXPECT_EQ(treatmentBetween(top, seam), CornerTreatment::turnedBackOverSecond);
    EXPECT_EQ(treatmentBetween(bottom, opening), CornerTreatment::turnedBackOverSecond);
    EXPECT_EQ(treatmentBetween(fold, bottom), CornerTreatment::mitred);
    EXPECT_EQ(treatmentBetween(seam, seam), CornerTreatment::mitred);
}

}  // namespace
}  // namespace coutil
