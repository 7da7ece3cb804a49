#include "core/block/dual_active_set.h"

#include <gtest/gtest.h>

namespace coutil {
namespace {

// Rows x, y, x + y of the plane; the thing to make small is x^2 + y^2, so the Gram matrix is C C'.
Eigen::MatrixXd planeGram() {
    Eigen::MatrixXd rows(3, 2);
    rows << 1, 0, 0, 1, 1, 1;
    return rows * rows.transpose();
}

TEST(DualActiveSet, equalityAlone) {
    const auto minimum = constrainedMinimum(planeGram(), {{2, 1, 2, true}});
    ASSERT_TRUE(minimum.isFeasible);
    EXPECT_NEAR(minimum.rowValues[0], 1, 1e-12);
    EXPECT_NEAR(minimum.rowValues[1], 1, 1e-12);
}

TEST(DualActiveSet, bindingInequalityMovesTheMinimum) {
    // On x + y = 2 nearest to the origin with x >= 1.5: (1.5, 0.5).
    const auto minimum = constrainedMinimum(planeGram(), {{2, 1, 2, true}, {0, 1, 1.5, false}});
    ASSERT_TRUE(minimum.isFeasible);
    EXPECT_NEAR(minimum.rowValues[0], 1.5, 1e-12);
    EXPECT_NEAR(minimum.rowValues[1], 0.5, 1e-12);
    EXPECT_GT(minimum.multipliers[1], 0);
}

TEST(DualActiveSet, inequalityThatHoldsAnywayLeavesTheMinimum) {
    const auto minimum = constrainedMinimum(planeGram(), {{2, 1, 2, true}, {0, 1, 0.5, false}});
    ASSERT_TRUE(minimum.isFeasible);
    EXPECT_NEAR(minimum.rowValues[0], 1, 1e-12);
    EXPECT_EQ(minimum.multipliers[1], 0);
}

TEST(DualActiveSet, constraintThatStandsInTheWayIsDropped) {
    // x + y = 2; first y >= 1.2 is the worst broken, then x >= 1 - 1e-9 ... together they can't
    // both bind: y >= 1.2 and x <= 0.5 leave (0.5, 1.5).
    const auto minimum = constrainedMinimum(
        planeGram(), {{2, 1, 2, true}, {1, 1, 1.2, false}, {0, -1, -0.5, false}});
    ASSERT_TRUE(minimum.isFeasible);
    EXPECT_NEAR(minimum.rowValues[0], 0.5, 1e-12);
    EXPECT_NEAR(minimum.rowValues[1], 1.5, 1e-12);
}

TEST(DualActiveSet, contradictionIsFoundOut) {
    const auto minimum =
        constrainedMinimum(planeGram(), {{2, 1, 1, true}, {0, 1, 1, false}, {0, -1, 0, false}});
    EXPECT_FALSE(minimum.isFeasible);
}

}  // namespace
}  // namespace coutil
