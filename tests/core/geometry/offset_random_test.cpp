// Offsets of random outlines, judged by GEOS.
#include <algorithm>
#include <cmath>
#include <optional>

#include <gtest/gtest.h>

#include "core/geometry/offset_outline.h"
#include "core/geometry/tolerances.h"
#include "tests/core/geometry/geos_judge.h"
#include "tests/core/geometry/random_outline.h"

namespace coutil::test {
namespace {

constexpr double kJudgeFlatnessMm = 0.002;
// The promise is 0.01 mm; the judge's own chords come on top.
constexpr double kPromisedMm = tolerance::kOffsetMm + kJudgeFlatnessMm;

std::vector<Point> sewingRing(const std::vector<OffsetEdge>& edges,
                              double flatnessMm = kJudgeFlatnessMm) {
    std::vector<Point> ring;
    for (const OffsetEdge& edge : edges) {
        const auto points = flattened(edge.path, flatnessMm);
        ring.insert(ring.end(), points.begin(), points.end() - 1);
    }
    return ring;
}

// One outline that is sound by GEOS; nothing where it crosses itself.
struct Case {
    std::vector<OffsetEdge> edges;
    std::vector<CornerTreatment> treatments;
    GeosShape sewing;
};

std::optional<Case> caseOf(std::uint32_t seed) {
    Dice dice(seed);
    Case made;
    made.edges = randomOutline(dice);
    giveRandomWidths(made.edges, dice);
    made.treatments = randomTreatments(made.edges.size(), dice);
    const auto ring = sewingRing(made.edges);
    made.sewing = geosPolygon(ring);
    double doubleArea = 0;
    for (std::size_t k = 0; k < ring.size(); ++k) {
        const Point& a = ring[k];
        const Point& b = ring[(k + 1) % ring.size()];
        doubleArea += a.x() * b.y() - a.y() * b.x();
    }
    if (doubleArea < 200 || !geosFault(made.sewing).empty()) return std::nullopt;
    return made;
}

// Asks GEOS for the distances of points of a cutting line from every edge.
class DistanceJudge {
  public:
    DistanceJudge(const Case& made, const OffsetOutline& outline)
        : made_(made), outline_(outline), all_(closed(sewingRing(made.edges))) {
        for (const OffsetEdge& edge : made.edges) {
            tapes_.emplace_back(flattened(edge.path, kJudgeFlatnessMm));
        }
    }

    // Never nearer than asked to an edge in sight, and at the width of one, outside corner zones.
    void judge(const Point& p) const {
        if (isInZone(p)) return;
        double farthest = 1e9;
        for (std::size_t k = 0; k < tapes_.size(); ++k) {
            const double width = made_.edges[k].widthMm;
            const double distance = tapes_[k].distanceMm(p);
            farthest = std::min(farthest, distance - width);
            if (distance < width - kPromisedMm) {
                EXPECT_FALSE(isInSight(p, tapes_[k].nearest(p)))
                    << "nearer to edge " << k << " than " << width << ": " << distance << " at "
                    << p.transpose();
            }
        }
        EXPECT_LE(farthest, kPromisedMm) << p.transpose();
    }

  private:
    static std::vector<Point> closed(std::vector<Point> ring) {
        ring.push_back(ring.front());
        return ring;
    }
    bool isInZone(const Point& p) const {
        return std::any_of(outline_.corners.begin(), outline_.corners.end(),
                           [&](const OffsetCorner& corner) {
                               return (p - corner.at).norm() <= corner.reachMm + kPromisedMm;
                           });
    }
    // Not so where the panel itself lies between.
    bool isInSight(const Point& p, const Point& place) const {
        return !all_.isMetBetween(p, place + 0.05 * (p - place).normalized()) &&
               !geosContains(made_.sewing, (p + place) / 2);
    }

    const Case& made_;
    const OffsetOutline& outline_;
    GeosTape all_;
    std::vector<GeosTape> tapes_;
};

// A zone may hold the built corner and what was cut off there, no more.
void expectZonesAreSmall(const Case& made, const OffsetOutline& outline) {
    ASSERT_EQ(outline.corners.size(), made.edges.size());
    for (std::size_t k = 0; k < made.edges.size(); ++k) {
        const double widest =
            std::max(made.edges[k].widthMm, made.edges[(k + 1) % made.edges.size()].widthMm);
        EXPECT_LE(outline.corners[k].reachMm, (kLongestCornerReach + 2) * widest);
    }
}

// Issue: "GEOS as judge, random per-edge widths 0-25 mm, 20,000 outlines without one invalid".
TEST(OffsetRandom, twentyThousandOutlinesWithoutOneInvalid) {
    constexpr int kOutlines = 20000;
    constexpr std::size_t kLooksPerOutline = 10;
    int done = 0;
    int withLoss = 0;
    for (std::uint32_t seed = 1; done < kOutlines && !HasFailure(); ++seed) {
        const auto made = caseOf(seed);
        if (!made) continue;
        ++done;
        SCOPED_TRACE("seed " + std::to_string(seed));
        const auto outline = offsetOutline(made->edges, made->treatments);
        ASSERT_TRUE(outline.hasValue()) << keyOf(outline.problems.front().code);
        withLoss += !outline.problems.empty();
        const auto cut = geosPolygon(outline->points);
        EXPECT_EQ(geosFault(cut), "");
        EXPECT_GE(geosAreaMm2(cut), geosAreaMm2(made->sewing) - 1);
        expectZonesAreSmall(*made, *outline);
        const DistanceJudge judge(*made, *outline);
        const std::size_t step =
            std::max<std::size_t>(1, outline->points.size() / kLooksPerOutline);
        for (std::size_t k = 0; k < outline->points.size(); k += step) {
            const Point& p = outline->points[k];
            judge.judge(p);
            judge.judge((p + outline->points[(k + 1) % outline->points.size()]) / 2);
        }
    }
    EXPECT_LT(withLoss, kOutlines / 10);
}

TEST(OffsetRandom, sewingLineLiesInsideAndCurvesFollow) {
    for (std::uint32_t seed = 100001; seed <= 101000; ++seed) {
        const auto made = caseOf(seed);
        if (!made) continue;
        SCOPED_TRACE("seed " + std::to_string(seed));
        const auto outline = offsetOutline(made->edges, made->treatments);
        ASSERT_TRUE(outline.hasValue());
        const auto cut = geosPolygon(outline->points);
        double length = 0;
        for (const OffsetEdge& edge : made->edges) length += lengthMm(edge.path);
        EXPECT_LT(geosAreaOutsideMm2(made->sewing, cut), length * tolerance::kCutFlatnessMm);
        // The cubic pieces run along the polygon, and leave out nothing of it.
        std::vector<Point> closed = outline->points;
        closed.push_back(closed.front());
        const GeosTape polygon(closed);
        const auto curve = flattened(outline->path, kJudgeFlatnessMm);
        EXPECT_EQ(outline->path.start(), outline->path.end());
        for (const Point& p : curve) EXPECT_LT(polygon.distanceMm(p), kPromisedMm);
        const GeosTape curves(curve);
        for (const Point& p : outline->points) EXPECT_LT(curves.distanceMm(p), kPromisedMm);
    }
}

bool hasCornerSharperThan(const std::vector<OffsetEdge>& edges, double leastRad) {
    for (std::size_t k = 0; k < edges.size(); ++k) {
        const Cubic& before = edges[k].path.pieces.back();
        const Cubic& after = edges[(k + 1) % edges.size()].path.pieces.front();
        const Vector in = before.p3 - before.p2;
        const Vector out = after.p1 - after.p0;
        if (in.normalized().dot(out.normalized()) < -std::cos(leastRad)) return true;
    }
    return false;
}

// With one width and all corners mitred GEOS makes the same shape from the polygon.
TEST(OffsetRandom, equalWidthsGiveTheAreaOfGeos) {
    int done = 0;
    for (std::uint32_t seed = 200001; done < 600; ++seed) {
        auto made = caseOf(seed);
        // Below 45 degrees the limits of the mitres differ (1 / sin(20 degrees) is 2.9).
        if (!made || hasCornerSharperThan(made->edges, 0.785)) continue;
        ++done;
        SCOPED_TRACE("seed " + std::to_string(seed));
        Dice dice(seed);
        const double width = dice.between(0.5, 25);
        for (OffsetEdge& edge : made->edges) edge.widthMm = width;
        const auto outline = offsetOutline(made->edges, {});
        ASSERT_TRUE(outline.hasValue());
        // The mitres of GEOS follow the last chords; these are fine enough to be tangents.
        const auto fine = sewingRing(made->edges, 2e-5);
        const double expected = geosMitredAreaMm2(geosPolygon(fine), width, kLongestCornerReach);
        double perimeter = 0;
        for (std::size_t k = 0; k < outline->points.size(); ++k) {
            const std::size_t next = (k + 1) % outline->points.size();
            perimeter += (outline->points[next] - outline->points[k]).norm();
        }
        // GEOS smooths hollows of what it widens by up to a hundredth of the width (from memory).
        const double allowed = perimeter * std::max(tolerance::kOffsetMm, width / 1000);
        EXPECT_NEAR(geosAreaMm2(geosPolygon(outline->points)), expected, allowed);
        // Nowhere nearer, corners included.
        auto closed = sewingRing(made->edges);
        closed.push_back(closed.front());
        const GeosTape tape(closed);
        for (const Point& p : outline->points) EXPECT_GE(tape.distanceMm(p), width - kPromisedMm);
    }
}

TEST(OffsetRandom, sameTwice) {
    for (std::uint32_t seed = 1; seed <= 50; ++seed) {
        const auto made = caseOf(seed);
        if (!made) continue;
        const auto once = offsetOutline(made->edges, made->treatments);
        const auto again = offsetOutline(made->edges, made->treatments);
        ASSERT_TRUE(once.hasValue() && again.hasValue());
        EXPECT_EQ(once->points, again->points);
        EXPECT_EQ(once->path, again->path);
    }
}

}  // namespace
}  // namespace coutil::test
