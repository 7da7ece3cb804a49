#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>

#include "core/geometry/cross_product.h"
#include "core/geometry/path.h"
#include "tests/core/geometry/random_curves.h"

namespace coutil {
namespace {

using namespace coutil::testing;

constexpr int kChords = 400;

std::vector<Point> sampled(const Cubic& c) {
    std::vector<Point> points;
    for (int i = 0; i <= kChords; ++i) points.push_back(pointAt(c, i / double{kChords}));
    return points;
}

// Crossings of two dense chains at a clear angle, found without any cleverness.
std::vector<Point> bruteCrossings(const Cubic& first, const Cubic& second) {
    const auto a = sampled(first);
    const auto b = sampled(second);
    std::vector<Point> crossings;
    for (std::size_t i = 1; i < a.size(); ++i) {
        const Vector d = a[i] - a[i - 1];
        for (std::size_t j = 1; j < b.size(); ++j) {
            const Vector e = b[j] - b[j - 1];
            const double cross = crossProduct(d, e);
            if (std::abs(cross) < 0.2 * d.norm() * e.norm()) continue;
            const Vector between = b[j - 1] - a[i - 1];
            const double t = crossProduct(between, e) / cross;
            const double s = crossProduct(between, d) / cross;
            if (t >= 0 && t <= 1 && s >= 0 && s <= 1) crossings.push_back(a[i - 1] + t * d);
        }
    }
    return crossings;
}

TEST(MeetingsAtRandom, bruteForceFindsNothingMore) {
    RandomCurves random(81);
    std::size_t seen = 0;
    for (int i = 0; i < 150; ++i) {
        const Cubic first = random.cubic(300);
        const Cubic second = random.cubic(300);
        const auto found = meetingsOf(Path{{first}}, Path{{second}});
        for (const Meeting& m : found) {
            EXPECT_LT((pointAt(first, m.onFirst.t) - pointAt(second, m.onSecond.t)).norm(), 1e-6)
                << written(first) << written(second);
        }
        for (const Point& p : bruteCrossings(first, second)) {
            // A dense chord is off by up to 24 * 300 / 8 / 400^2 = 0.006 mm, over the sine 0.2.
            const bool isFound = std::any_of(found.begin(), found.end(), [&](const Meeting& m) {
                return (m.point - p).norm() < 0.1;
            });
            EXPECT_TRUE(isFound) << written(first) << written(second) << written(p);
            ++seen;
        }
    }
    EXPECT_GT(seen, 100U);
}

TEST(MeetingsAtRandom, theOrderOfTheTwoDoesNotMatter) {
    RandomCurves random(82);
    for (int i = 0; i < 300; ++i) {
        const Path first = random.path(2, 300);
        const Path second = random.path(2, 300);
        const auto one = meetingsOf(first, second);
        const auto other = meetingsOf(second, first);
        EXPECT_EQ(one.size(), other.size()) << written(first) << written(second);
        for (const Meeting& m : one) {
            EXPECT_TRUE(
                std::any_of(other.begin(), other.end(),
                            [&](const Meeting& o) { return (o.point - m.point).norm() < 1e-6; }))
                << written(first) << written(second);
        }
        EXPECT_TRUE(std::is_sorted(one.begin(), one.end(), [](const Meeting& a, const Meeting& b) {
            return a.onFirst.piece != b.onFirst.piece ? a.onFirst.piece < b.onFirst.piece
                                                      : a.onFirst.t < b.onFirst.t;
        }));
    }
}

TEST(MeetingsAtRandom, aPathMeetsALineLaidThroughIt) {
    RandomCurves random(83);
    for (int i = 0; i < 300; ++i) {
        const Path path = random.path(2, 300);
        const PathPosition at{static_cast<std::size_t>(i) % 2, random.number(0, 1)};
        const Point through = pointAt(path, at);
        const double angle = random.number(0, 7);
        const Vector along(400 * std::cos(angle), 400 * std::sin(angle));
        const auto found = meetingsOf(path, straightPath(through - along, through + along));
        EXPECT_TRUE(
            std::any_of(found.begin(), found.end(),
                        [&](const Meeting& m) { return (m.point - through).norm() < 1e-5; }))
            << written(path) << written(through) << angle;
    }
}

// Pieces that share a stretch by construction.
TEST(MeetingsAtRandom, overlappingPartsGiveTheEndsOfTheOverlap) {
    RandomCurves random(84);
    for (int i = 0; i < 60; ++i) {
        const Cubic c = random.cubic(300);
        const Cubic early = between(c, 0, 0.75);
        const Cubic late = between(c, 0.25, 1);
        const auto found = meetingsOf(Path{{early}}, Path{{late}});
        for (const double t : {0.25, 0.75}) {
            EXPECT_TRUE(std::any_of(
                found.begin(), found.end(),
                [&](const Meeting& m) { return (m.point - pointAt(c, t)).norm() < 1e-6; }))
                << written(c) << t;
        }
    }
}

}  // namespace
}  // namespace coutil
