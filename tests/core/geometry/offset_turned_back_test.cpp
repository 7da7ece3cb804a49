// Turned-back corners, tested by folding: the allowance outside the sewing line is turned over onto
// the panel and has to lie there edge to edge.
#include <algorithm>
#include <cmath>
#include <numbers>
#include <tuple>

#include <gtest/gtest.h>

#include "core/geometry/offset_outline.h"
#include "core/geometry/tolerances.h"
#include "tests/core/geometry/geos_judge.h"

namespace coutil::test {
namespace {

constexpr double kEdgeToEdgeMm = 0.01;
constexpr double kOnLineMm = 2 * tolerance::kInkGridMm;

Point mirrored(const Point& p, const Point& on, const Vector& along) {
    const Vector offset = p - on;
    return on + 2 * offset.dot(along) * along - offset;
}

double radians(double degrees) { return degrees * std::numbers::pi / 180; }

// A panel with its fold edge upright on the right, at x = 100 and up to y = 300, where the rim
// arrives at the inner angle; the rim may bulge. The lower corner has the same angle.
struct FoldCase {
    std::vector<OffsetEdge> edges;
    Point upper{100, 300};
    Point lower{100, 0};
};

FoldCase foldCase(double angleRad, double foldMm, double rimMm, double rimBulge) {
    FoldCase made;
    const double rise = -std::cos(angleRad) / std::sin(angleRad) * 100;
    const Point farUpper(0, 300 + rise);
    const Point farLower(0, -rise);
    const auto rim = [&](const Point& a, const Point& b, double bulge) {
        const Vector chord = b - a;
        const Vector right(chord.y(), -chord.x());
        return Path{{Cubic{a, a + chord / 3 + bulge * right, b - chord / 3 + bulge * right, b}}};
    };
    made.edges = {{rim(farLower, made.lower, rimBulge), rimMm},
                  {straightPath(made.lower, made.upper), foldMm},
                  {rim(made.upper, farUpper, rimBulge), rimMm},
                  {straightPath(farUpper, farLower), 0}};
    return made;
}

const std::vector<CornerTreatment> kTurnedBack{CornerTreatment::turnedBackOverSecond,
                                               CornerTreatment::turnedBackOverFirst,
                                               CornerTreatment::mitred, CornerTreatment::mitred};

// The part of a ring right of x = 100 (Sutherland and Hodgman's clipping by one line).
std::vector<Point> rightPart(const std::vector<Point>& ring) {
    std::vector<Point> kept;
    const auto isOnLine = [](const Point& p) { return std::abs(p.x() - 100) <= kOnLineMm; };
    for (std::size_t k = 0; k < ring.size(); ++k) {
        const Point& a = ring[k];
        const Point& b = ring[(k + 1) % ring.size()];
        if (isOnLine(a) || a.x() > 100) kept.push_back(a);
        if (!isOnLine(a) && !isOnLine(b) && (a.x() > 100) != (b.x() > 100)) {
            kept.emplace_back(a + (100 - a.x()) / (b.x() - a.x()) * (b - a));
        }
    }
    return kept;
}

// Folds everything right of x = 100 over and returns how far its ends lie from the cutting line on
// the panel, at most, and the area by which it sticks out of the cut panel.
std::pair<double, double> fold(const OffsetOutline& outline, double foldMm) {
    std::vector<Point> closed = outline.points;
    closed.push_back(closed.front());
    const GeosTape cutting(closed);
    double farthest = 0;
    std::vector<Point> flap;
    for (const Point& p : rightPart(outline.points)) {
        flap.push_back(mirrored(p, {100, 0}, {0, 1}));
        // The cutting line along the fold edge itself lies in the middle of the panel.
        if (p.x() > 100 + foldMm - tolerance::kInkGridMm) continue;
        farthest = std::max(farthest, cutting.distanceMm(flap.back()));
    }
    std::reverse(flap.begin(), flap.end());
    const GeosShape folded = geosPolygon(flap);
    EXPECT_EQ(geosFault(folded), "");
    EXPECT_GT(geosAreaMm2(folded), 200 * foldMm);
    return {farthest, geosAreaOutsideMm2(folded, geosPolygon(outline.points))};
}

class TurnedBack : public testing::TestWithParam<std::tuple<double, double, double, double>> {};

TEST_P(TurnedBack, foldedOverItLiesEdgeToEdge) {
    const auto [degrees, foldMm, rimMm, bulge] = GetParam();
    const FoldCase made = foldCase(radians(degrees), foldMm, rimMm, bulge);
    const auto outline = offsetOutline(made.edges, kTurnedBack);
    ASSERT_TRUE(outline.hasValue());
    EXPECT_TRUE(outline.problems.empty());
    EXPECT_EQ(outline->corners[0].treatment, CornerTreatment::turnedBackOverSecond);
    EXPECT_EQ(outline->corners[1].treatment, CornerTreatment::turnedBackOverFirst);
    const auto [farthest, outside] = fold(*outline, foldMm);
    EXPECT_LE(farthest, kEdgeToEdgeMm);
    // Two ends of at most 30 mm, each within 0.01 mm.
    EXPECT_LE(outside, 2 * 30 * kEdgeToEdgeMm);
}

INSTANTIATE_TEST_SUITE_P(AllAngles, TurnedBack,
                         testing::Combine(testing::Values(50, 60, 70, 80, 90, 100, 110, 120),
                                          testing::Values(10, 15), testing::Values(0, 10, 12.5),
                                          testing::Values(0, 0.08, -0.08)));

// The end of the allowance as a maker draws it: at a bound rim that meets the seam at 110 degrees
// the line leaves the corner 20 degrees above square.
TEST(TurnedBack, endAtABoundRimIsItsMirrorImage) {
    const auto outline = offsetOutline(foldCase(radians(110), 10, 0, 0).edges, kTurnedBack);
    ASSERT_TRUE(outline.hasValue());
    const Point upper(110, 300 + 10 * std::tan(radians(20)));
    double nearest = 1e9;
    for (const Point& p : outline->points) nearest = std::min(nearest, (p - upper).norm());
    EXPECT_LT(nearest, 2 * tolerance::kInkGridMm);
}

// Where the mirrored end would run along the seam the allowance is cut square instead.
TEST(TurnedBack, sharpAnglesAreBevelled) {
    for (const double degrees : {12.0, 168.0}) {
        auto made = foldCase(radians(degrees), 10, 0, 0);
        if (degrees < 90) {
            // A long thin panel, so that the rims do not cross.
            const double far = 100 / std::tan(radians(degrees)) + 100;
            made.edges[1].path = straightPath({100, 0}, {100, 2 * far});
            made.edges[2].path = straightPath({100, 2 * far}, {0, far + 100});
            made.edges[3].path = straightPath({0, far + 100}, {0, far - 100});
            made.edges[0].path = straightPath({0, far - 100}, {100, 0});
        }
        const auto outline = offsetOutline(made.edges, kTurnedBack);
        ASSERT_TRUE(outline.hasValue());
        EXPECT_EQ(outline->corners[0].treatment, CornerTreatment::bevelled);
        EXPECT_EQ(outline->corners[1].treatment, CornerTreatment::bevelled);
        EXPECT_EQ(geosFault(geosPolygon(outline->points)), "");
    }
}

// A seam that curves towards its end is folded along its tangent there.
TEST(TurnedBack, curvedSeamFoldsAlongItsTangent) {
    auto made = foldCase(radians(95), 10, 10, 0.05);
    made.edges[1].path = Path{{Cubic{{100, 0}, {85, 90}, {88, 210}, {100, 300}}}};
    const Vector along = Vector(12, 90).normalized();
    const auto outline = offsetOutline(made.edges, kTurnedBack);
    ASSERT_TRUE(outline.hasValue());
    EXPECT_EQ(outline->corners[1].treatment, CornerTreatment::turnedBackOverFirst);
    std::vector<Point> closed = outline->points;
    closed.push_back(closed.front());
    const GeosTape cutting(closed);
    int seen = 0;
    for (const Point& p : outline->points) {
        const Vector from = p - made.upper;
        const double outside = from.x() * along.y() - from.y() * along.x();
        if (outside < 0.01 || outside > 9.5 || from.norm() > 20) continue;
        EXPECT_LE(cutting.distanceMm(mirrored(p, made.upper, along)), kEdgeToEdgeMm);
        ++seen;
    }
    EXPECT_GT(seen, 1);
}

}  // namespace
}  // namespace coutil::test
