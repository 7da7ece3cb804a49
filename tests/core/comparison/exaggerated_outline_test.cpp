#include "core/comparison/exaggerated_outline.h"

#include <gtest/gtest.h>

#include "core/block/draft_corset.h"
#include "core/geometry/largest_distance.h"
#include "tests/core/block/sample_bodies.h"
#include "tests/core/pattern/two_panels.h"

namespace coutil {
namespace {

Panel widened(double byMm) {
    Panel panel = samples::twoPanels().panels[0];
    panel.edges[0].path = straightPath({0, -80}, {100 + byMm, -80});
    panel.edges[1].path = straightPath({100 + byMm, -80}, {100 + byMm, 120});
    panel.edges[2].path = straightPath({100 + byMm, 120}, {0, 120});
    return panel;
}

TEST(ExaggeratedOutline, multipliesTheDifference) {
    const Panel a = widened(0);
    for (const double factor : {1.0, 5.0, 10.0}) {
        const Path outline = exaggeratedOutline(a, widened(2), Vector::Zero(), factor);
        const Box box = boundsOf(outline);
        EXPECT_NEAR(box.lowest.x(), 0, 1e-9);
        EXPECT_NEAR(box.highest.x(), 100 + 2 * factor, 1e-9);
        EXPECT_EQ(outline.start(), outline.end());
        EXPECT_NEAR(signedAreaMm2(outline), (100 + 2 * factor) * 200, 1e-6);
    }
}

// Factor 1 is the panel itself, whatever its curves.
TEST(ExaggeratedOutline, onceIsThePanelItself) {
    Style tighter;
    tighter.easeMm[LevelId::waist] = -90;
    const auto a = draftCorset(samples::average(), Style{});
    const auto b = draftCorset(samples::average(), tighter);
    for (const PanelComparison& pair : comparePatterns(*a, *b).panels) {
        const Path outline = exaggeratedOutline(*a, *b, pair, 1);
        const Path wanted =
            placed(outlineOf(b->panels[*pair.inB]), Placement{.shift = pair.shiftOfB});
        EXPECT_LT(largestDistance(outline, wanted).distanceMm, 0.02) << pair.name;
    }
}

TEST(ExaggeratedOutline, emptyWherePanelsHaveOtherEdges) {
    Panel b = widened(2);
    b.edges.pop_back();
    EXPECT_TRUE(exaggeratedOutline(widened(0), b, Vector::Zero(), 5).isEmpty());
}

}  // namespace
}  // namespace coutil
