// From the bone table to rods, reels and ready cut bones.
#include "core/making_up/bone_plans.h"

#include "core/making_up/material_needs.h"
#include "tests/core/making_up/plan_check.h"

namespace coutil {
namespace {

constexpr BoneType kSpiral{BoneKind::spiralSteel, 6};
constexpr BoneType kFlat{BoneKind::flatSteel, 7.5};

BoneRow rowOf(const BoneType& type, double lengthMm, int count = 2) {
    BoneRow row;
    row.type = type;
    row.lengthMm = lengthMm;
    row.count = count;
    return row;
}

TEST(BonePlans, everyTypeFromItsOwnStock) {
    EXPECT_EQ(boneTypeKey(kSpiral), "spiral_steel 6");
    EXPECT_EQ(boneTypeKey(kFlat), "flat_steel 7.5");
    BoneChoices choices;
    choices.stock = {{kSpiral, {10'000}, 1}, {kFlat, {1000}, 2}};
    const auto toBuy = bonesToBuy({rowOf(kSpiral, 300), rowOf(kFlat, 320), rowOf(kSpiral, 280),
                                   rowOf(kSpiral, 300), rowOf(kSpiral, 0)},
                                  choices);
    ASSERT_TRUE(toBuy.hasValue());
    EXPECT_TRUE(toBuy.problems.empty());
    EXPECT_TRUE(toBuy->readyCut.empty());
    ASSERT_EQ(toBuy->plans.size(), 2U);
    EXPECT_EQ(toBuy->plans[0].type, kFlat);
    plan_check::expectSound(toBuy->plans[0].plan, {{320, 2}}, 2);
    plan_check::expectSound(toBuy->plans[1].plan, {{300, 4}, {280, 2}}, 1);
}

TEST(BonePlans, withoutStockTheyAreBoughtReadyCut) {
    const auto toBuy = bonesToBuy({rowOf(kSpiral, 280), rowOf(kSpiral, 300)}, {});
    ASSERT_TRUE(toBuy.hasValue());
    EXPECT_TRUE(toBuy.problems.empty());
    EXPECT_EQ(toBuy->readyCut, (std::vector<BoneTotal>{{kSpiral, 300, 2}, {kSpiral, 280, 2}}));
    const auto needs = needsOf(*toBuy);
    ASSERT_EQ(needs.size(), 2U);
    EXPECT_EQ(materialKey(needs[0]), "bone_stock/spiral_steel 6");
    EXPECT_EQ(needs[0].sizeMm, 300);
    EXPECT_EQ(needs[0].amount, 2);
}

TEST(BonePlans, aTypeWithoutStockBesideOthersAndTooShortStockAreTold) {
    BoneChoices choices;
    choices.stock = {{kFlat, {300}, 2}};
    const auto missing = bonesToBuy({rowOf(kSpiral, 280), rowOf(kFlat, 300)}, choices);
    ASSERT_TRUE(missing.hasValue());
    ASSERT_EQ(missing.problems.size(), 1U);
    EXPECT_EQ(missing.problems[0].code, ProblemCode::stockMissing);
    EXPECT_EQ(missing.problems[0].subject, "spiral_steel 6");
    const auto tooLong = bonesToBuy({rowOf(kFlat, 310)}, choices);
    EXPECT_FALSE(tooLong.hasValue());
    ASSERT_EQ(tooLong.problems.size(), 1U);
    EXPECT_EQ(tooLong.problems[0].code, ProblemCode::pieceLongerThanStock);
    EXPECT_EQ(tooLong.problems[0].subject, "flat_steel 7.5");
}

}  // namespace
}  // namespace coutil
