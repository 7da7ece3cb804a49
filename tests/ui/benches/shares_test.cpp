#include "ui/benches/shares.h"

#include <numeric>

#include <gtest/gtest.h>

namespace coutil {
namespace {

TEST(Shares, othersKeepTheirProportionsAndTheSumStaysOne) {
    const std::vector<double> shares{0.4, 0.3, 0.2, 0.1};
    const std::vector<double> changed = sharesWithOneSet(shares, 0, 0.1);
    EXPECT_DOUBLE_EQ(changed[0], 0.1);
    EXPECT_NEAR(std::accumulate(changed.begin(), changed.end(), 0.0), 1, 1e-12);
    EXPECT_NEAR(changed[1] / changed[2], 0.3 / 0.2, 1e-12);
    EXPECT_NEAR(changed[2] / changed[3], 0.2 / 0.1, 1e-12);
}

TEST(Shares, othersThatWereNothingShareEvenly) {
    const std::vector<double> changed = sharesWithOneSet({1, 0, 0}, 0, 0.4);
    EXPECT_NEAR(changed[1], 0.3, 1e-12);
    EXPECT_NEAR(changed[2], 0.3, 1e-12);
}

}  // namespace
}  // namespace coutil
