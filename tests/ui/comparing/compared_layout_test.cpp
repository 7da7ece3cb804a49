#include "ui/comparing/compared_layout.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "core/alterations/whole_pattern.h"
#include "tests/ui/timeline/grown_garment.h"

namespace coutil {
namespace {

std::shared_ptr<const ComparedStates> takenInByFour() {
    const Folio folio = grownFolio();
    return comparedStates(folio, {digestOf(folio, 1), {}}, {digestOf(folio, 2), {}});
}

// Where a closed outline crosses the waist, from the left.
std::vector<double> waistX(const Path& outline) {
    std::vector<double> xs;
    for (const PathPosition& at : crossingsAtHeight(outline, 0)) {
        xs.push_back(pointAt(outline, at).x());
    }
    std::ranges::sort(xs);
    return xs;
}

TEST(ComparedLayout, pairsLieBesideEachOtherWithTheirWaistsInOneLine) {
    const auto states = takenInByFour();
    const ComparedLayout layout = comparedLayout(*states, 1);
    ASSERT_EQ(layout.pairs.size(), states->comparison.panels.size());
    ASSERT_EQ(layout.waistHeightMm, std::vector<double>{0});
    double right = -1;
    for (const PairOnTable& pair : layout.pairs) {
        EXPECT_NEAR(pair.shift.y(), 0, 1e-12);
        EXPECT_GT(boundsOf(pair.a).lowest.x(), right);
        right = boundsOf(pair.a).highest.x();
    }
}

// Half of the 4 mm across the seam lies on each panel (the default split): 2 mm, drawn 10 mm apart
// five times as large, on panel 2's back edge and on panel 3's front edge.
TEST(ComparedLayout, differencesAreMultiplied) {
    const auto states = takenInByFour();
    for (const double factor : {1.0, 5.0, 10.0}) {
        const ComparedLayout layout = comparedLayout(*states, factor);
        const auto a = waistX(layout.pairs[1].a);
        const auto b = waistX(layout.pairs[1].b);
        ASSERT_EQ(a.size(), b.size());
        EXPECT_NEAR(a.front(), b.front(), 0.03) << factor;
        // The seam leans a little, so the offset across it is a little more along the waist.
        EXPECT_NEAR((a.back() - b.back()) / factor, 2, 0.06) << factor;
        const auto a3 = waistX(layout.pairs[2].a);
        const auto b3 = waistX(layout.pairs[2].b);
        EXPECT_NEAR((b3.front() - a3.front()) / factor, 2, 0.06) << factor;
        EXPECT_EQ(layout.pairs[1].isMultiplied, factor != 1);
    }
}

TEST(ComparedLayout, theRightSideHasARowOfItsOwn) {
    auto states = std::make_shared<ComparedStates>(*takenInByFour());
    const Pattern half = states->a.pattern;
    states->b.pattern = wholeOf(half);
    states->comparison = comparePatterns(half, states->b.pattern);
    const ComparedLayout layout = comparedLayout(*states, 1);
    ASSERT_EQ(layout.pairs.size(), 2 * half.panels.size());
    ASSERT_EQ(layout.waistHeightMm.size(), 2U);
    EXPECT_LT(layout.waistHeightMm[1], 0);
    for (std::size_t i = 0; i < half.panels.size(); ++i) {
        const PairOnTable& left = layout.pairs[i];
        const PairOnTable& right = layout.pairs[i + half.panels.size()];
        EXPECT_GT(boundsOf(left.a).lowest.y(), boundsOf(right.a).highest.y());
        EXPECT_FALSE(left.a.isEmpty());
        EXPECT_FALSE(right.b.isEmpty());
    }
}

}  // namespace
}  // namespace coutil
