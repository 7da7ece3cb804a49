#include <numeric>

#include <gmock/gmock.h>

#include "core/block/draft_corset.h"

namespace coutil {
namespace {

using testing::ElementsAre;

// The project's own drafting rules give these figures for five panels a half.
TEST(SeamShares, fivePanelsAsTheDraftingRulesSay) {
    const Style style;
    EXPECT_THAT(seamSharesInForce(style, LevelId::underBust), ElementsAre(0.46, 0.22, 0.14, 0.18));
    EXPECT_THAT(seamSharesInForce(style, LevelId::waist), ElementsAre(0.24, 0.26, 0.26, 0.24));
    EXPECT_THAT(seamSharesInForce(style, LevelId::highHip), ElementsAre(0.14, 0.26, 0.34, 0.26));
    EXPECT_THAT(seamSharesInForce(style, LevelId::hip), ElementsAre(0.14, 0.26, 0.34, 0.26));
    EXPECT_THAT(seamSharesInForce(style, LevelId::aboveBust), ElementsAre(0.45, 0.20, 0.15, 0.20));
}

TEST(SeamShares, sumToOneForEveryPanelCount) {
    for (int count = 4; count <= 7; ++count) {
        Style style;
        style.panelsPerHalf = count;
        for (const LevelId level : kAllLevels) {
            const auto shares = seamSharesInForce(style, level);
            EXPECT_EQ(shares.size(), static_cast<std::size_t>(count - 1));
            EXPECT_NEAR(std::accumulate(shares.begin(), shares.end(), 0.0), 1, 1e-12);
        }
    }
}

// The reasoning behind them, for every count: bust seam over and under the bust, side at the hip.
TEST(SeamShares, bustSeamShapesTheBustAndTheSideTheHip) {
    for (int count = 4; count <= 7; ++count) {
        Style style;
        style.panelsPerHalf = count;
        for (const LevelId level : {LevelId::aboveBust, LevelId::underBust}) {
            const auto shares = seamSharesInForce(style, level);
            EXPECT_EQ(std::ranges::max_element(shares), shares.begin()) << count;
        }
        const auto hip = seamSharesInForce(style, LevelId::hip);
        EXPECT_EQ(std::ranges::min_element(hip), hip.begin()) << count;
    }
}

TEST(SeamShares, ownSharesWinAndLoseTheirRounding) {
    Style style;
    style.panelsPerHalf = 4;
    style.seamShares[LevelId::waist] = {0.33, 0.33, 0.33};
    for (const double share : seamSharesInForce(style, LevelId::waist))
        EXPECT_NEAR(share, 1.0 / 3, 1e-12);
}

}  // namespace
}  // namespace coutil
