// Properties over bodies of the survey (every eighth of 993) and all panel counts.
#include <gtest/gtest.h>

#include "core/block/draft_corset.h"
#include "core/comparison/comparison.h"
#include "core/comparison/girth_chart.h"
#include "tests/bodies/ansur_bodies.h"

namespace coutil {
namespace {

template <class Look>
void forBodies(Look look) {
    const auto sets = bodies::ansurBodies();
    for (std::size_t i = 0; i < sets.size(); i += 8) {
        const auto body = completeBody(sets[i]);
        ASSERT_TRUE(body);
        Style style;
        style.panelsPerHalf = 4 + static_cast<int>(i / 8 % 4);
        look(*body, style);
        ASSERT_FALSE(testing::Test::HasFailure()) << "body " << i;
    }
}

TEST(ComparisonOfBodies, withItselfGivesZeroEverywhere) {
    forBodies([](const Body& body, const Style& style) {
        const auto pattern = draftCorset(body, style);
        ASSERT_TRUE(pattern);
        const auto comparison = comparePatterns(*pattern, *pattern);
        EXPECT_EQ(comparison.panels.size(), pattern->panels.size());
        for (const auto& panel : comparison.panels) {
            EXPECT_EQ(panel.areaAMm2, panel.areaBMm2);
            EXPECT_EQ(panel.shiftOfB, Vector::Zero());
            EXPECT_EQ(panel.edges.size(), 4U);
            for (const auto& edge : panel.edges) EXPECT_EQ(edge.largestMm, 0);
        }
        for (const auto& seam : comparison.seams) {
            EXPECT_EQ(seam.largest->amountMm, 0);
            for (const auto& level : seam.levels) EXPECT_EQ(level.amountMm.value_or(0), 0);
        }
        for (const auto& level : comparison.levels) EXPECT_EQ(level.differenceMm.value_or(0), 0);
        for (const auto& height : comparison.edgeHeights) EXPECT_EQ(height.differenceMm, 0);
        for (const auto& at : girthChart(*pattern, *pattern).girths) EXPECT_EQ(at.aMm, at.bMm);
    });
}

// The promise of the block: pattern girth = body + ease at every level, to 0.01 mm. So two styles
// differ by the difference of their ease, and the seams of a half share out half of it.
TEST(ComparisonOfBodies, anEaseGivesExactlyItsGirth) {
    forBodies([](const Body& body, Style style) {
        const auto a = draftCorset(body, style);
        style.easeMm[LevelId::waist] -= 14;
        style.easeMm[LevelId::highHip] += 9;
        const auto b = draftCorset(body, style);
        ASSERT_TRUE(a && b);
        const auto comparison = comparePatterns(*a, *b);
        for (const auto& level : comparison.levels) {
            if (!level.differenceMm) continue;
            const double wantedMm = level.level == "waist"      ? -14
                                    : level.level == "high_hip" ? 9
                                                                : 0;
            EXPECT_NEAR(*level.differenceMm, wantedMm, 0.02) << level.level;
            double sumMm = 0;
            for (const auto& seam : comparison.seams)
                for (const auto& at : seam.levels)
                    if (at.level == level.level) sumMm += *at.amountMm;
            EXPECT_NEAR(2 * sumMm, -*level.differenceMm, 1e-6) << level.level;
        }
    });
}

// What is found from a to b is what is found from b to a, the other way round.
TEST(ComparisonOfBodies, theOtherWayRoundIsTheOpposite) {
    forBodies([](const Body& body, Style style) {
        const auto a = draftCorset(body, style);
        style.easeMm[LevelId::waist] -= 14;
        const auto b = draftCorset(body, style);
        ASSERT_TRUE(a && b);
        const auto there = comparePatterns(*a, *b);
        const auto back = comparePatterns(*b, *a);
        for (std::size_t p = 0; p < there.panels.size(); ++p)
            for (std::size_t e = 0; e < there.panels[p].edges.size(); ++e)
                EXPECT_NEAR(there.panels[p].edges[e].largestMm, back.panels[p].edges[e].largestMm,
                            0.02);
        for (std::size_t s = 0; s < there.seams.size(); ++s)
            for (std::size_t l = 0; l < there.seams[s].levels.size(); ++l)
                EXPECT_NEAR(there.seams[s].levels[l].amountMm.value_or(0),
                            -back.seams[s].levels[l].amountMm.value_or(0), 1e-9);
    });
}

}  // namespace
}  // namespace coutil
