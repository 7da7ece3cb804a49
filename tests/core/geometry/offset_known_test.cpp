// Offsets whose results are known from mathematics.
#include <cmath>
#include <numbers>

#include <gmock/gmock.h>

#include "core/geometry/offset_outline.h"
#include "core/geometry/tolerances.h"
#include "tests/core/geometry/geos_judge.h"

namespace coutil::test {
namespace {

constexpr double kPi = std::numbers::pi;

std::vector<OffsetEdge> polygon(const std::vector<Point>& corners,
                                const std::vector<double>& widthsMm) {
    std::vector<OffsetEdge> edges;
    for (std::size_t k = 0; k < corners.size(); ++k) {
        edges.push_back({straightPath(corners[k], corners[(k + 1) % corners.size()]), widthsMm[k]});
    }
    return edges;
}

std::vector<OffsetEdge> square(const std::vector<double>& widthsMm) {
    return polygon({{0, 0}, {100, 0}, {100, 100}, {0, 100}}, widthsMm);
}

// A closed smooth curve through cos/sin with given half axes, as cubic pieces of equal angle.
std::vector<OffsetEdge> ellipse(double a, double b, double widthMm) {
    constexpr int kPieces = 32;
    const double step = 2 * kPi / kPieces;
    const double arm = 4.0 / 3 * std::tan(step / 4);
    Path path;
    for (int k = 0; k < kPieces; ++k) {
        const auto at = [&](double t) { return Point(a * std::cos(t), b * std::sin(t)); };
        const auto slope = [&](double t) { return Vector(-a * std::sin(t), b * std::cos(t)); };
        const double t0 = k * step;
        const double t1 = (k + 1) * step;
        path.pieces.push_back({at(t0), at(t0) + arm * slope(t0), at(t1) - arm * slope(t1), at(t1)});
    }
    path.pieces.back().p3 = path.pieces.front().p0;
    return {{path, widthMm}};
}

double areaMm2(const OffsetOutline& outline) { return geosAreaMm2(geosPolygon(outline.points)); }

double perimeterMm(const std::vector<Point>& ring) {
    double sum = 0;
    for (std::size_t k = 0; k < ring.size(); ++k) {
        sum += (ring[(k + 1) % ring.size()] - ring[k]).norm();
    }
    return sum;
}

OffsetOutline offset(const std::vector<OffsetEdge>& edges,
                     const std::vector<CornerTreatment>& corners = {}) {
    auto outline = offsetOutline(edges, corners);
    EXPECT_TRUE(outline.hasValue());
    EXPECT_TRUE(outline.problems.empty());
    return outline ? *outline : OffsetOutline{};
}

// checks.md, geometry: "square 100 offset +10: mitred area 14400" (computed).
TEST(OffsetKnown, mitredSquare) {
    const auto outline = offset(square({10, 10, 10, 10}));
    EXPECT_DOUBLE_EQ(areaMm2(outline), 14400);
    EXPECT_THAT(outline.points, testing::UnorderedElementsAre(Point(-10, -10), Point(110, -10),
                                                              Point(110, 110), Point(-10, 110)));
    EXPECT_EQ(outline.path.pieces.size(), 4U);
}

// geometry.md 1.2: 10 mm on horizontal and 20 mm on vertical sides give exactly 140 x 120.
TEST(OffsetKnown, squareOfTwoWidths) {
    EXPECT_DOUBLE_EQ(areaMm2(offset(square({10, 20, 10, 20}))), 140.0 * 120);
}

TEST(OffsetKnown, foldKeepsItsLine) {
    const auto outline = offset(square({10, 10, 10, 0}));
    EXPECT_DOUBLE_EQ(areaMm2(outline), 110.0 * 120);
    for (const Point& p : outline.points) EXPECT_GE(p.x(), 0);
}

// A fold that meets a slanting hem at 100 degrees: the hem's allowance must not pass the fold line.
TEST(OffsetKnown, allowanceEndsOnTheProlongedFold) {
    const double slope = std::tan(10 * kPi / 180);
    const auto outline =
        offset(polygon({{0, 0}, {100, 100 * slope}, {100, 200}, {0, 200}}, {10, 10, 10, 0}));
    const auto blunt =
        offset(polygon({{0, 0}, {100, -100 * slope}, {100, 200}, {0, 200}}, {10, 10, 10, 0}));
    for (const auto* each : {&outline, &blunt}) {
        double lowestOnFold = 0;
        for (const Point& p : each->points) {
            EXPECT_GE(p.x(), -tolerance::kInkGridMm);
            if (p.x() < tolerance::kInkGridMm) lowestOnFold = std::min(lowestOnFold, p.y());
        }
        EXPECT_NEAR(lowestOnFold, -10 / std::cos(10 * kPi / 180), tolerance::kInkGridMm);
    }
}

// checks.md, geometry: "circle r 50 offset +10: area 11309.7336, perimeter 376.9911" (computed).
TEST(OffsetKnown, circle) {
    const auto outline = offset(ellipse(50, 50, 10));
    EXPECT_NEAR(areaMm2(outline), 11309.7336, 376.9911 * tolerance::kCutFlatnessMm);
    EXPECT_NEAR(perimeterMm(outline.points), 376.9911, 0.02);
    for (const Point& p : outline.points) EXPECT_NEAR(p.norm(), 60, 0.001);
    for (const Cubic& c : outline.path.pieces) {
        for (const double t : {0.0, 0.2, 0.5, 0.8}) EXPECT_NEAR(pointAt(c, t).norm(), 60, 0.01);
    }
    EXPECT_LE(outline.path.pieces.size(), 32U);
}

// checks.md, geometry: offset of a convex shape by d has area A + P d + pi d^2, perimeter P + 2 pi
// d (Steiner). Area and perimeter of the ellipse: pi a b, and Ramanujan's second formula, whose
// error for these axes is below 1e-6 (from memory).
TEST(OffsetKnown, steinerOnAnEllipse) {
    const double a = 90;
    const double b = 55;
    const double h = (a - b) * (a - b) / ((a + b) * (a + b));
    const double perimeter = kPi * (a + b) * (1 + 3 * h / (10 + std::sqrt(4 - 3 * h)));
    for (const double d : {1.0, 10.0, 25.0}) {
        const auto outline = offset(ellipse(a, b, d));
        const double expected = kPi * a * b + perimeter * d + kPi * d * d;
        EXPECT_NEAR(areaMm2(outline), expected,
                    (perimeter + 2 * kPi * d) * tolerance::kCutFlatnessMm);
        EXPECT_NEAR(perimeterMm(outline.points), perimeter + 2 * kPi * d, 0.05);
    }
}

// checks.md, geometry: mitre length at interior angle a is d / sin(a/2).
TEST(OffsetKnown, mitreLengthAndItsLimit) {
    for (const double degrees : {30.0, 45.0, 60.0, 90.0, 120.0, 150.0}) {
        const double half = degrees / 2 * kPi / 180;
        const Point tip(0, 0);
        const auto triangle = polygon({tip,
                                       {300 * std::cos(half), -300 * std::sin(half)},
                                       {300 * std::cos(half), 300 * std::sin(half)}},
                                      {10, 10, 10});
        // Counter-clockwise from the tip: down right, up, back.
        const auto outline = offset(triangle);
        double farthest = 0;
        double nearest = 1e9;
        for (const Point& p : outline.points) {
            if (p.x() < 5) farthest = std::max(farthest, (p - tip).norm());
            nearest = std::min(nearest, (p - tip).norm());
        }
        const OffsetCorner& corner = outline.corners[2];
        const double mitre = 10 / std::sin(half);
        if (mitre <= kLongestCornerReach * 10) {
            EXPECT_EQ(corner.treatment, CornerTreatment::mitred);
            EXPECT_NEAR(farthest, mitre, 0.001);
        } else {
            EXPECT_EQ(corner.treatment, CornerTreatment::bevelled);
            EXPECT_LT(farthest, 10 * std::numbers::sqrt2);
        }
    }
}

// Cut straight across, the bevel still leaves the whole width at the corner itself.
TEST(OffsetKnown, bevelLeavesTheWidthAtTheCorner) {
    using enum CornerTreatment;
    const auto outline = offset(square({10, 10, 10, 10}), {bevelled, bevelled, bevelled, bevelled});
    const auto shape = geosPolygon(outline.points);
    EXPECT_TRUE(geosFault(shape).empty());
    std::vector<Point> closed = outline.points;
    closed.push_back(closed.front());
    const GeosTape tape(closed);
    for (const Point& corner : {Point(0, 0), Point(100, 0), Point(100, 100), Point(0, 100)}) {
        EXPECT_NEAR(tape.distanceMm(corner), 10, 0.001);
    }
    // Each mitre loses a right-angled triangle with the height 10 (sqrt 2 - 1).
    const double height = 10 * (std::numbers::sqrt2 - 1);
    EXPECT_NEAR(geosAreaMm2(shape), 14400 - 4 * height * height, 0.05);
}

// A hollow arc of radius 8 in the top edge, 20 mm allowance: its line meets itself.
TEST(OffsetKnown, hollowTighterThanTheWidthIsTold) {
    Path top = straightPath({100, 100}, {58, 100});
    const double arm = 8 * 0.5522847498307935;  // checks.md: quarter circle as a cubic
    const Point centre(50, 100);
    top.pieces.push_back({centre + Point(8, 0), centre + Point(8, -arm), centre + Point(arm, -8),
                          centre + Point(0, -8)});
    top.pieces.push_back({centre + Point(0, -8), centre + Point(-arm, -8), centre + Point(-8, -arm),
                          centre + Point(-8, 0)});
    top.pieces.push_back(straightCubic({42, 100}, {0, 100}));
    auto edges = square({20, 20, 20, 20});
    edges[2].path = top;
    const auto outline = offsetOutline(edges, {});
    ASSERT_TRUE(outline.hasValue());
    EXPECT_TRUE(geosFault(geosPolygon(outline->points)).empty());
    ASSERT_FALSE(outline.problems.empty());
    EXPECT_EQ(outline.problems.front().code, ProblemCode::offsetLostPart);
    EXPECT_EQ(outline.problems.front().severity, Severity::warning);
    ASSERT_TRUE(outline.problems.front().at.has_value());
    EXPECT_LT((*outline.problems.front().at - centre).norm(), 8.1);
    EXPECT_NEAR(outline.problems.front().figures.at(0).value, kPi * 8, 2);
}

// Two tongues whose allowances meet: the gap left between them is not lost silently.
TEST(OffsetKnown, enclosedGapIsTold) {
    const auto outline = offsetOutline(polygon({{0, 0},
                                                {200, 0},
                                                {200, 200},
                                                {110, 200},
                                                {110, 150},
                                                {150, 100},
                                                {100, 50},
                                                {50, 100},
                                                {90, 150},
                                                {90, 200},
                                                {0, 200}},
                                               std::vector<double>(11, 12)),
                                       {});
    ASSERT_TRUE(outline.hasValue());
    EXPECT_TRUE(geosFault(geosPolygon(outline->points)).empty());
    EXPECT_THAT(outline.problems,
                testing::Contains(testing::Field(&Problem::code, ProblemCode::offsetLostPart)));
}

TEST(OffsetKnown, whatIsNoOutlineIsRefused) {
    const auto codeOf = [](const std::vector<OffsetEdge>& edges) {
        const auto outline = offsetOutline(edges, {});
        EXPECT_FALSE(outline.hasValue());
        return outline.problems.empty() ? ProblemCode::offsetLostPart
                                        : outline.problems.front().code;
    };
    EXPECT_EQ(codeOf({}), ProblemCode::outlineOpen);
    EXPECT_EQ(codeOf(polygon({{0, 0}, {0, 100}, {100, 100}}, {1, 1, 1})),
              ProblemCode::outlineCrossesItself)
        << "clockwise";
    EXPECT_EQ(codeOf(polygon({{0, 0}, {100, 0}, {10, 90}, {90, 90}}, {0, 0, 0, 0})),
              ProblemCode::outlineCrossesItself);
    auto open = square({10, 10, 10, 10});
    open[1].path = straightPath({100, 0}, {100, 99});
    EXPECT_EQ(codeOf(open), ProblemCode::outlineOpen);
    auto bad = square({10, std::nan(""), 10, 10});
    EXPECT_EQ(codeOf(bad), ProblemCode::styleValueOutOfRange);
}

}  // namespace
}  // namespace coutil::test
