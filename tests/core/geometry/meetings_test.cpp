#include <cmath>
#include <limits>
#include <numbers>

#include <gtest/gtest.h>

#include "core/geometry/path.h"
#include "tests/core/geometry/known_curves.h"

namespace coutil {
namespace {

using namespace coutil::testing;

void expectPoints(const std::vector<Meeting>& found, const std::vector<Point>& expected,
                  double mm = 1e-9) {
    ASSERT_EQ(found.size(), expected.size());
    for (std::size_t i = 0; i < found.size(); ++i) {
        EXPECT_LT((found[i].point - expected[i]).norm(), mm)
            << "meeting " << i << ": " << found[i].point.transpose();
    }
}

TEST(Meetings, linesMeetOnceOrNot) {
    expectPoints(meetingsOf(straightPath({0, 0}, {100, 100}), straightPath({0, 100}, {100, 0})),
                 {{50, 50}});
    EXPECT_TRUE(
        meetingsOf(straightPath({0, 0}, {40, 40}), straightPath({0, 100}, {100, 0})).empty());
    EXPECT_TRUE(meetingsOf(straightPath({0, 0}, {100, 0}), straightPath({0, 1}, {100, 1})).empty());
    EXPECT_TRUE(meetingsOf(Path{}, straightPath({0, 1}, {100, 1})).empty());
}

TEST(Meetings, endsThatTouchMeet) {
    expectPoints(meetingsOf(straightPath({0, 0}, {100, 37}), straightPath({100, 37}, {200, 0})),
                 {{100, 37}});
    expectPoints(meetingsOf(straightPath({0, 0}, {100, 0}), straightPath({30, 0}, {30, 40})),
                 {{30, 0}});
    expectPoints(meetingsOf(straightPath({0, 0}, {100, 37}), straightPath({100, 37}, {200, 74})),
                 {{100, 37}});
}

TEST(Meetings, parabolaAndLine) {
    // x^2 = m x + c: x = (m +- sqrt(m^2 + 4 c)) / 2.
    for (const double m : {0.0, 0.7, -1.3}) {
        for (const double c : {0.5, 2.0, 0.01}) {
            const Path line = straightPath({-3, -3 * m + c}, {3, 3 * m + c});
            const double root = std::sqrt(m * m + 4 * c);
            const double x0 = (m - root) / 2;
            const double x1 = (m + root) / 2;
            expectPoints(meetingsOf(line, Path{{parabola(1, -3, 3)}}),
                         {{x0, x0 * x0}, {x1, x1 * x1}});
        }
    }
}

TEST(Meetings, parabolaAndTangentTouchOnce) {
    // y = 2 a x - a^2 touches y = x^2 in x = a. In mm: scaled up hundredfold.
    for (const double a : {-120.0, 0.0, 37.0, 99.0}) {
        const auto y = [a](double x) { return (2 * a * x - a * a) / 100; };
        const Path line = straightPath({-300, y(-300)}, {280, y(280)});
        const auto found = meetingsOf(line, Path{{parabola(0.01, -300, 300)}});
        ASSERT_EQ(found.size(), 1U) << a;
        EXPECT_NEAR(found[0].point.x(), a, 1e-6);
    }
}

TEST(Meetings, twoParabolas) {
    // y = x^2 and x = y^2 meet in (0,0) and (1,1).
    const Path upright{{parabola(1, -1.5, 1.5)}};
    const Path lying = placed(upright, {-std::numbers::pi / 2, {0, 0}, false});
    expectPoints(meetingsOf(upright, lying), {{0, 0}, {1, 1}});
}

TEST(Meetings, cubicParabolaAndLineThreeTimes) {
    expectPoints(meetingsOf(Path{{cubicParabola(1, -2, 2)}}, straightPath({-2, -2}, {2, 2})),
                 {{-1, -1}, {0, 0}, {1, 1}});
}

TEST(Meetings, inflectionTouchIsOnePlace) {
    const auto found =
        meetingsOf(Path{{cubicParabola(1e-4, -70, 60)}}, straightPath({-100, 0}, {100, 0}));
    ASSERT_EQ(found.size(), 1U);
    // Within a touch (1e-7 mm) of the line for 0.1 mm to both sides; the place is somewhere there.
    EXPECT_NEAR(found[0].point.x(), 0, 0.11);
    EXPECT_NEAR(found[0].point.y(), 0, 1e-7);
}

TEST(Meetings, twoCubicsMeetNineTimes) {
    // As many as Bezout allows. Mirror images in y = x: each meeting has its mirror image.
    const Path first{{Cubic{{0, 0}, {100, 300}, {0, -200}, {100, 100}}}};
    const Path second{{Cubic{{0, 0}, {300, 100}, {-200, 0}, {100, 100}}}};
    const auto found = meetingsOf(first, second);
    ASSERT_EQ(found.size(), 9U);
    for (const Meeting& m : found) {
        EXPECT_LT((pointAt(first, m.onFirst) - pointAt(second, m.onSecond)).norm(), 1e-9);
        EXPECT_LT(
            (Point(m.point.y(), m.point.x()) - closestOn(first, {m.point.y(), m.point.x()}).point)
                .norm(),
            1e-9);
    }
}

TEST(Meetings, circlesCrossOrTouch) {
    const Path first = wholeCircle({0, 0}, 50);
    const auto crossing = meetingsOf(first, wholeCircle({60, 0}, 50));
    ASSERT_EQ(crossing.size(), 2U);
    // Circles would cross in (30, +-40); cubic circles are up to 2.7e-4 of the radius outside.
    for (const Meeting& m : crossing) {
        EXPECT_NEAR(m.point.x(), 30, 1e-9);
        EXPECT_NEAR(std::abs(m.point.y()), 40, 0.02);
    }
    const auto touching = meetingsOf(wholeCircle({0, 0}, 50), straightPath({-90, 50}, {90, 50}));
    expectPoints(touching, {{0, 50}});
    EXPECT_TRUE(meetingsOf(first, straightPath({-90, 50.00001}, {90, 50.00001})).empty());
    // A hair below the top: half the chord is sqrt(2 R d), with R = 3/2 r k^2 / (1 - k), the radius
    // of curvature of the cubic at its end.
    const double radius = 1.5 * 50 * kQuarterArm * kQuarterArm / (1 - kQuarterArm);
    const double half = std::sqrt(2 * radius * 1e-5);
    expectPoints(meetingsOf(straightPath({-90, 49.99999}, {90, 49.99999}), first),
                 {{-half, 49.99999}, {half, 49.99999}}, 1e-4);
}

TEST(Meetings, sharedStretchesGiveTheirEnds) {
    expectPoints(meetingsOf(straightPath({0, 0}, {100, 37}), straightPath({50, 18.5}, {200, 74})),
                 {{50, 18.5}, {100, 37}});
    // Across joints of both, and against the direction of travel.
    expectPoints(meetingsOf(polylinePath({{0, 0}, {10, 3.7}, {100, 37}}),
                            polylinePath({{200, 74}, {60, 22.2}, {50, 18.5}, {3, 99}})),
                 {{50, 18.5}, {100, 37}});
    const Cubic c{{0, 0}, {30, 100}, {60, 180}, {40, 300}};
    const Path whole{{c}};
    expectPoints(meetingsOf(whole, Path{{between(c, 0.3, 0.7)}}),
                 {pointAt(c, 0.3), pointAt(c, 0.7)}, 1e-6);
    expectPoints(meetingsOf(Path{{between(c, 0, 0.7)}}, reversed(Path{{between(c, 0.3, 1)}})),
                 {pointAt(c, 0.3), pointAt(c, 0.7)}, 1e-6);
    expectPoints(meetingsOf(whole, whole), {c.p0, c.p3}, 1e-6);
}

// Nothing sensible can be found, but the search must end.
TEST(Meetings, numbersThatAreNoneGiveNothing) {
    const double none = std::numeric_limits<double>::quiet_NaN();
    const double far = std::numeric_limits<double>::infinity();
    const Path good{{parabola(0.01, -100, 100)}};
    for (const double value : {none, far}) {
        const Path bad{{Cubic{{0, 0}, {value, 10}, {20, value}, {30, 0}}}};
        EXPECT_TRUE(meetingsOf(good, bad).empty());
        EXPECT_TRUE(meetingsOf(bad, bad).empty());
        EXPECT_FALSE(std::isfinite(lengthMm(bad)));
        EXPECT_LT(flattened(bad, 0.01).size(), 100U);
        EXPECT_LE(crossingsAtHeight(bad, 5).size(), 3U);
        EXPECT_LE(closestOn(bad, {1, 1}).distanceMm, 40);
    }
}

TEST(Meetings, aJointInTheCrossingCountsOnce) {
    expectPoints(meetingsOf(polylinePath({{0, 0}, {50, 50}, {100, 0}}),
                            polylinePath({{50, -20}, {50, 50}, {50, 90}})),
                 {{50, 50}});
}

}  // namespace
}  // namespace coutil
