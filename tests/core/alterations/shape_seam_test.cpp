#include <cmath>

#include <gtest/gtest.h>

#include "core/alterations/find_places.h"
#include "core/alterations/upward_edge.h"
#include "core/alterations/whole_pattern.h"
#include "core/geometry/tolerances.h"
#include "tests/core/alterations/drafted.h"

namespace coutil {
namespace {

using samples::altered;
using samples::brokenPromises;
using samples::drafted;
using samples::takeIn;

// How far the new edge lies from the old one at a seam position, along the old normal, into the
// panel.
double movedInMm(const Edge& before, const Edge& after, double positionMm) {
    const UpwardEdge old = upwardOf(before);
    const PathPosition place = positionAtLength(old.path, old.waistAtMm + positionMm);
    const Point from = pointAt(old.path, place);
    const Vector inward = inwardOf(tangentAt(old.path, place), old.hasPanelOnLeft);
    const Path ray = straightPath(from - 60 * inward, from + 60 * inward);
    const auto meetings = meetingsOf(ray, after.path);
    double best = 1e9;
    for (const Meeting& meeting : meetings) {
        const double mm = (meeting.point - from).dot(inward);
        if (std::abs(mm) < std::abs(best)) best = mm;
    }
    return best;
}

double takenInMm(const Pattern& before, const Pattern& after, const Seam& seam, double s) {
    return movedInMm(edgeAt(before, seam.front), edgeAt(after, seam.front), s) +
           movedInMm(edgeAt(before, seam.back), edgeAt(after, seam.back), s);
}

// checks.md: "n mm pinned at a seam is n/2 off each panel; fades to nothing at the next marked
// level" (common practice, no source).
TEST(ShapeSeam, halfOfThePinComesOffEachPanel) {
    const Pattern before = drafted();
    const Pattern after = altered(before, {takeIn("2-3", {{0, 10}})});
    const Seam& seam = before.seams[1];
    EXPECT_NEAR(movedInMm(edgeAt(before, seam.front), edgeAt(after, seam.front), 0), 5, 1e-3);
    EXPECT_NEAR(movedInMm(edgeAt(before, seam.back), edgeAt(after, seam.back), 0), 5, 1e-3);
    EXPECT_NEAR(takenInMm(before, after, seam, 62), 0, 1e-3);
    EXPECT_NEAR(takenInMm(before, after, seam, -62), 0, 1e-3);
    EXPECT_NEAR(*before.levels[3].patternMm - *after.levels[3].patternMm, 0, 25);
    for (const Problem& problem : brokenPromises(after))
        ADD_FAILURE() << keyOf(problem.code) << " " << problem.subject;
}

TEST(ShapeSeam, panelsItDoesNotTouchStayBitForBit) {
    const Pattern before = drafted(7);
    const Pattern after = altered(before, {takeIn("1-2", {{0, 10}})});
    for (std::size_t p = 3; p < before.panels.size(); ++p)
        EXPECT_EQ(before.panels[p], after.panels[p]) << p;
    EXPECT_NE(before.panels[0], after.panels[0]);
}

}  // namespace
}  // namespace coutil
