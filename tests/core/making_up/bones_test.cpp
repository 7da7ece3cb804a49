// Bone lengths against arc lengths known in closed form (checks.md "Geometry": computed) and the
// trade's figures (checks.md "Trade figures": practice): channel less 8 mm where bound, 12 mm where
// turned, rounded down to 10 mm.
#include "core/making_up/bones.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "tests/core/making_up/arc_seam.h"

namespace coutil {
namespace {

Channel along(Path line) { return {.key = "seam 1-2", .line = std::move(line), .widthMm = 8}; }

BoneTable tableOf(const Channel& channel, std::vector<Problem>& problems,
                  const MakingUpChoices& choices = {}, const AllowanceStyle& allowance = {}) {
    return boneTable(samples::twoPanels(), {channel}, allowance, choices, problems);
}

BoneRow rowOf(const Channel& channel, const MakingUpChoices& choices = {},
              const AllowanceStyle& allowance = {}) {
    std::vector<Problem> problems;
    return tableOf(channel, problems, choices, allowance).rows.at(0);
}

Path scaled(const Cubic& unit, double by) {
    return {{{by * unit.p0, by * unit.p1, by * unit.p2, by * unit.p3}}};
}

TEST(Bones, lengthsFollowFromArcLengthsInClosedForm) {
    // Length exactly 2 at scale 1; y = x^2 on 0..1: 1.4789428575445975.
    const Cubic two{{0, 0}, {0, 1}, {1, 1}, {1, 0}};
    EXPECT_NEAR(rowOf(along(scaled(two, 150))).channelLengthMm, 300, 1e-6);
    EXPECT_EQ(rowOf(along(scaled(two, 150))).lengthMm, 280);  // 300 - 16 = 284
    const Cubic parabola{{0, 0}, {1.0 / 3, 0}, {2.0 / 3, 1.0 / 3}, {1, 1}};
    EXPECT_NEAR(rowOf(along(scaled(parabola, 200))).channelLengthMm, 295.7885715089195, 1e-6);
    EXPECT_EQ(rowOf(along(scaled(parabola, 200))).lengthMm, 270);  // 279.79
    // A circle's arc, to what a cubic of 0.25 rad leaves it.
    for (const double radiusMm : {120.0, 400.0, 2500.0}) {
        const Path arc{{testing::arcCubic(radiusMm, 0, 0.25)}};
        EXPECT_NEAR(rowOf(along(arc)).channelLengthMm, radiusMm * 0.25, 1e-5 * radiusMm);
    }
}

TEST(Bones, aLengthThatFitsToTheStepIsKept) {
    EXPECT_EQ(rowOf(along(straightPath({0, 0}, {0, 216}))).lengthMm, 200);
    EXPECT_EQ(rowOf(along(straightPath({0, 0}, {0, 215.99}))).lengthMm, 190);
    MakingUpChoices halfInches;
    halfInches.bones.stepMm = 12.7;
    EXPECT_NEAR(rowOf(along(straightPath({0, 0}, {0, 216})), halfInches).lengthMm, 15 * 12.7, 1e-9);
}

TEST(Bones, endsKeepFreeOfBindingAndTurning) {
    const Channel channel = along(straightPath({0, 0}, {0, 250}));
    AllowanceStyle turned;
    turned.isTopBound = false;
    EXPECT_EQ(rowOf(channel, {}, turned).lengthMm, 230);  // 250 - 8 - 12
    MakingUpChoices wide;
    wide.binding.finishedMm = 12;
    wide.bones.stepMm = 1;
    EXPECT_EQ(rowOf(channel, wide).lengthMm, 226) << "never into the binding";
}

TEST(Bones, countsFollowTheSides) {
    Channel channel = along(straightPath({0, 0}, {0, 250}));
    EXPECT_EQ(rowOf(channel).count, 2);
    channel.side = PanelSide::left;
    EXPECT_EQ(rowOf(channel).count, 1);
    channel.side = PanelSide::both;
    channel.isOnFold = true;
    EXPECT_EQ(rowOf(channel).count, 1);
}

TEST(Bones, tooShortAChannelGetsNone) {
    std::vector<Problem> problems;
    const auto table = tableOf(along(straightPath({0, 0}, {0, 64})), problems);
    EXPECT_EQ(table.rows.at(0).lengthMm, 0);
    EXPECT_TRUE(table.totals.empty());
    ASSERT_EQ(problems.size(), 1U);
    EXPECT_EQ(problems[0].code, ProblemCode::boneTooShort);
    EXPECT_EQ(problems[0].figures[0].value, 40);
    EXPECT_EQ(problems[0].figures[1].value, 50);
}

TEST(Bones, aKindThatDoesNotBendSidewaysIsTold) {
    Channel channel = along({{testing::arcCubic(300, 0, 0.8)}});
    for (const auto& [kind, isTooStiff] :
         {std::pair{BoneKind::flatSteel, true}, std::pair{BoneKind::spiralSteel, false},
          std::pair{BoneKind::synthetic, true}}) {
        channel.bone.kind = kind;
        std::vector<Problem> problems;
        const auto table = tableOf(channel, problems);
        EXPECT_GT(table.rows.at(0).lengthMm, 0);
        EXPECT_EQ(problems.size(), isTooStiff ? 1U : 0U);
        if (!isTooStiff) continue;
        EXPECT_EQ(problems.at(0).code, ProblemCode::boneKindTooStiff);
        EXPECT_NEAR(problems.at(0).figures[0].value, 300, 1);
    }
}

TEST(Bones, totalsGatherTypesAndLengths) {
    Channel longer = along(straightPath({0, 0}, {0, 316}));
    Channel flat = along(straightPath({0, 0}, {0, 316}));
    flat.bone = {BoneKind::flatSteel, 7};
    const Channel shorter = along(straightPath({0, 0}, {0, 216}));
    std::vector<Problem> problems;
    const auto table =
        boneTable(samples::twoPanels(), {shorter, longer, flat, shorter}, {}, {}, problems);
    const std::vector<BoneTotal> expected{{{BoneKind::flatSteel, 7}, 300, 2},
                                          {{BoneKind::spiralSteel, 6}, 300, 2},
                                          {{BoneKind::spiralSteel, 6}, 200, 4}};
    EXPECT_EQ(table.totals, expected);
    EXPECT_TRUE(problems.empty());
}

}  // namespace
}  // namespace coutil
