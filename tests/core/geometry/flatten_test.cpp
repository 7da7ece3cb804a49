#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include <gtest/gtest.h>

#include "core/geometry/path.h"
#include "tests/core/geometry/known_curves.h"
#include "tests/core/geometry/random_curves.h"

namespace coutil {
namespace {

using namespace coutil::testing;

double distanceToChain(const std::vector<Point>& chain, const Point& p) {
    double best = std::numeric_limits<double>::infinity();
    for (std::size_t i = 1; i < chain.size(); ++i) {
        const Vector d = chain[i] - chain[i - 1];
        const double squared = d.squaredNorm();
        const double t =
            squared > 0 ? std::clamp((p - chain[i - 1]).dot(d) / squared, 0.0, 1.0) : 0;
        best = std::min(best, (chain[i - 1] + t * d - p).norm());
    }
    return best;
}

double largestGapMm(const Path& path, const std::vector<Point>& chain) {
    double gap = 0;
    for (const Cubic& c : path.pieces) {
        for (int k = 0; k <= 400; ++k) {
            gap = std::max(gap, distanceToChain(chain, pointAt(c, k / 400.0)));
        }
    }
    return gap;
}

TEST(Flattened, staysWithinTheTolerance) {
    RandomCurves random(51);
    for (int i = 0; i < 60; ++i) {
        const Path path = random.path(2, 300);
        for (const double toleranceMm : {1.0, 0.1, 0.005}) {
            const auto chain = flattened(path, toleranceMm);
            EXPECT_LE(largestGapMm(path, chain), toleranceMm + 1e-12) << written(path);
            EXPECT_EQ(chain.front(), path.start());
            EXPECT_EQ(chain.back(), path.end());
            EXPECT_NE(std::find(chain.begin(), chain.end(), path.pieces[1].p0), chain.end());
        }
    }
}

TEST(Flattened, cuspsAndDoublingBackStayWithin) {
    for (const Cubic& c : {semicubicalParabola(-7, 5), Cubic{{0, 0}, {30, 0}, {-20, 0}, {10, 0}},
                           Cubic{{0, 0}, {0, 0}, {50, 90}, {90, 90}},
                           Cubic{{0, 0}, {100, 100}, {0, 100}, {100, 0}}}) {
        const Path path{{c}};
        EXPECT_LE(largestGapMm(path, flattened(path, 0.01)), 0.01 + 1e-12) << written(c);
    }
}

// The fewest chords for an arc of a circle: each takes the angle 2 acos(1 - tolerance / r). (They
// may not leave the circle outwards here, as all vertices are on it.)
TEST(Flattened, takesHardlyMorePointsThanNeeded) {
    for (const double radiusMm : {20.0, 100.0, 600.0}) {
        for (const double toleranceMm : {0.1, 0.005}) {
            const double fewest =
                std::numbers::pi / 2 / (2 * std::acos(1 - toleranceMm / radiusMm));
            const auto chain = flattened(Path{{quarterCircle(radiusMm)}}, toleranceMm);
            EXPECT_LE(static_cast<double>(chain.size() - 1), 1.15 * fewest + 1);
        }
    }
}

TEST(Flattened, straightPiecesStayWhole) {
    EXPECT_EQ(flattened(polylinePath({{0, 0}, {100, 37}, {200, 0}}), 0.001).size(), 3U);
    // Uneven speed along a straight line needs no points either.
    EXPECT_EQ(flattened(Path{{Cubic{{0, 0}, {90, 90}, {95, 95}, {100, 100}}}}, 0.001).size(), 2U);
    EXPECT_TRUE(flattened(Path{}, 0.1).empty());
    EXPECT_EQ(flattened(straightPath({5, 5}, {5, 5}), 0.1).size(), 2U);
}

}  // namespace
}  // namespace coutil
