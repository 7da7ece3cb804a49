#include "core/store/uuid.h"

#include <set>
#include <string>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using namespace coutil;

// RFC 9562, figure 1 and sections 5.4, 5.5: version in the 13th digit, variant 8, 9, a or b in the
// 17th.
TEST(Uuid, hasTheFormOfItsVersion) {
    EXPECT_THAT(newUuid(), testing::MatchesRegex("[0-9a-f]+-[0-9a-f]+-4[0-9a-f]+-[89ab][0-9a-f]+-"
                                                 "[0-9a-f]+"));
    EXPECT_THAT(derivedUuid("a"),
                testing::MatchesRegex("[0-9a-f]+-[0-9a-f]+-5[0-9a-f]+-[89ab][0-9a-f]+-"
                                      "[0-9a-f]+"));
    EXPECT_EQ(newUuid().size(), 36U);
}

TEST(Uuid, randomOnesDiffer) {
    std::set<std::string> seen;
    for (int i = 0; i < 2000; ++i) seen.insert(newUuid());
    EXPECT_EQ(seen.size(), 2000U);
}

// Computed outside with Python's uuid.uuid5(UUID(name space of uuid.cpp), text).
TEST(Uuid, derivedOneIsTheSameEverywhere) {
    EXPECT_EQ(derivedUuid("corset"), "2ac4bfae-b5cb-5aad-8e94-d65a36c0f4b8");
    EXPECT_EQ(derivedUuid(""), "1354198d-bb5b-55c8-a786-738a1a574769");
}

}  // namespace
