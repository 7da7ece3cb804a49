// The promises of the corset block over real bodies.
#include "core/block/draft_corset.h"

#include <gtest/gtest.h>

#include "tests/bodies/ansur_bodies.h"

namespace coutil {
namespace {

TEST(DraftCorset, everyTenthBodyDraftsSoundly) {
    const auto sets = bodies::ansurBodies();
    for (std::size_t i = 0; i < sets.size(); i += 10) {
        const auto body = completeBody(sets[i]);
        ASSERT_TRUE(body) << i;
        for (int panels = 4; panels <= 7; ++panels) {
            Style style;
            style.panelsPerHalf = panels;
            const auto pattern = draftCorset(*body, style);
            ASSERT_TRUE(pattern) << i << ": " << keyOf(pattern.problems.front().code);
            EXPECT_TRUE(checkPattern(*pattern).empty()) << i << ", " << panels << " panels";
        }
    }
}

}  // namespace
}  // namespace coutil
