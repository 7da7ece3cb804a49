#include <cmath>
#include <functional>
#include <limits>

#include <gtest/gtest.h>

#include "core/block/draft_corset.h"

namespace coutil {
namespace {

TEST(CheckStyle, theDefaultIsSound) {
    for (int count = 4; count <= 7; ++count) {
        Style style;
        style.panelsPerHalf = count;
        EXPECT_TRUE(checkStyle(style).empty()) << count;
    }
}

struct Bad {
    const char* subject;
    ProblemCode code;
    std::function<void(Style&)> spoil;
};

TEST(CheckStyle, everyBadValueIsNamed) {
    const double noNumber = std::numeric_limits<double>::quiet_NaN();
    constexpr auto kRange = ProblemCode::styleValueOutOfRange;
    constexpr auto kUnknown = ProblemCode::styleUnknownKey;
    const std::vector<Bad> bads{
        {"panels_per_half", kRange, [](Style& s) { s.panelsPerHalf = 3; }},
        {"panels_per_half", kRange, [](Style& s) { s.panelsPerHalf = 8; }},
        {"lacing_gap", kRange, [](Style& s) { s.lacingGapMm = -1; }},
        {"lacing_gap", kRange, [&](Style& s) { s.lacingGapMm = noNumber; }},
        {"lacing_gap_at.hip", kRange, [](Style& s) { s.lacingGapAtMm[LevelId::hip] = 301; }},
        {"ease.waist", kRange, [](Style& s) { s.easeMm[LevelId::waist] = -401; }},
        {"front_share", kRange, [](Style& s) { s.frontShare = 0.9; }},
        {"top_edge.front", kRange, [](Style& s) { s.topEdge.frontMm = 5; }},
        {"top_edge.side", kRange, [&](Style& s) { s.topEdge.sideMm = noNumber; }},
        {"top_edge.at_seam.2-3", kRange, [](Style& s) { s.topEdge.atSeamMm["2-3"] = 900; }},
        {"top_edge.at_seam", kUnknown, [](Style& s) { s.topEdge.atSeamMm["5-6"] = 100; }},
        {"bottom_edge.back", kRange, [](Style& s) { s.bottomEdge.backMm = -20; }},
        {"panel_shares", kRange,
         [](Style& s) {
             s.panelShares = {1, 1, 1};
         }},
        {"panel_shares", kRange,
         [](Style& s) {
             s.panelShares = {1, 1, 0, 1, 1};
         }},
        {"seam_shares.waist", kRange,
         [](Style& s) {
             s.seamShares[LevelId::waist] = {0.5, 0.5};
         }},
        {"seam_shares.hip.sum", kRange,
         [](Style& s) {
             s.seamShares[LevelId::hip] = {0.5, 0.5, 0.2, 0.2};
         }},
        {"front_part.1-2", kRange, [](Style& s) { s.frontPart["1-2"] = 1.2; }},
        {"front_part", kUnknown, [](Style& s) { s.frontPart["1-3"] = 0.4; }},
        {"own_levels.rib", kRange,
         [](Style& s) {
             s.ownLevels = {{"rib", 700}};
         }},
        {"own_levels", kUnknown,
         [](Style& s) {
             s.ownLevels = {{"waist", 20}};
         }},
        {"own_levels", kUnknown,
         [](Style& s) {
             s.ownLevels = {{"rib", 20}, {"rib", 30}};
         }},
        {"allowance.seam", kRange, [](Style& s) { s.allowance.seamMm = -2; }},
        {"allowance.by_edge.3/seam 2-3", kRange,
         [](Style& s) { s.allowance.byEdgeMm["3/seam 2-3"] = 200; }},
        {"allowance.by_edge", kUnknown, [](Style& s) { s.allowance.byEdgeMm["2/seam 3-4"] = 8; }},
        {"allowance.by_edge", kUnknown, [](Style& s) { s.allowance.byEdgeMm["top"] = 8; }},
    };
    for (const Bad& bad : bads) {
        Style style;
        bad.spoil(style);
        const auto problems = checkStyle(style);
        ASSERT_EQ(problems.size(), 1U) << bad.subject;
        EXPECT_EQ(problems.front().subject, bad.subject);
        EXPECT_EQ(problems.front().code, bad.code) << bad.subject;
    }
}

TEST(CheckStyle, edgesOfTheStylesOwnPanelsAreKnown) {
    Style style;
    style.allowance.byEdgeMm = {{"1/centre front", 20}, {"1/seam 1-2", 8}, {"5/centre back", 30},
                                {"5/seam 4-5", 8},      {"3/top", 6},      {"2/bottom", 6}};
    EXPECT_TRUE(checkStyle(style).empty());
}

}  // namespace
}  // namespace coutil
