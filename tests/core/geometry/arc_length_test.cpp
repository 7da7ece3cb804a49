#include "core/geometry/arc_length.h"

#include <cmath>
#include <vector>

#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <gtest/gtest.h>

#include "tests/core/geometry/known_curves.h"
#include "tests/core/geometry/random_curves.h"

namespace coutil {
namespace {

using namespace coutil::testing;

// An independent length: adaptive Gauss-Kronrod of Boost.Math in long double.
double independentLengthMm(const Cubic& c, double t0 = 0, double t1 = 1) {
    const auto speed = [&](long double t) {
        const auto coordinate = [t](long double a, long double b, long double d, long double e) {
            const long double u = 1 - t;
            return 3 * (u * u * (b - a) + 2 * u * t * (d - b) + t * t * (e - d));
        };
        const long double dx = coordinate(c.p0.x(), c.p1.x(), c.p2.x(), c.p3.x());
        const long double dy = coordinate(c.p0.y(), c.p1.y(), c.p2.y(), c.p3.y());
        return std::sqrt(dx * dx + dy * dy);
    };
    using Rule = boost::math::quadrature::gauss_kronrod<long double, 31>;
    return static_cast<double>(Rule::integrate(speed, static_cast<long double>(t0),
                                               static_cast<long double>(t1), 18, 1e-15L));
}

// Length of (s^2, s^3) from 0 to s: ((4 + 9 s^2)^(3/2) - 8) / 27.
double semicubicalLength(double s) { return (std::pow(4 + 9 * s * s, 1.5) - 8) / 27; }

// Table of checks, computed (exact mathematics).
TEST(ArcLength, quarterCircle) { EXPECT_NEAR(lengthMm(quarterCircle(1)), 1.5710166981, 5e-11); }

// Table of checks, computed: exactly 2.
TEST(ArcLength, archOfUnitSquare) {
    EXPECT_NEAR(lengthMm(Cubic{{0, 0}, {0, 1}, {1, 1}, {1, 0}}), 2, 1e-14);
}

// Table of checks, computed (exact mathematics).
TEST(ArcLength, parabola) {
    EXPECT_NEAR(lengthMm(Cubic{{0, 0}, {1.0 / 3, 0}, {2.0 / 3, 1.0 / 3}, {1, 1}}),
                1.4789428575445975, 1e-14);
}

// Table of checks, computed: r 10, 60 degrees, chord 10, sagitta 1.33974596, arc 10.47197551. In
// six pieces: the radial error of a cubic arc falls with the sixth power of its angle, from 2.7e-4
// at 90 degrees to 5e-10 at 10.
TEST(ArcLength, circularSegment) {
    Path arc;
    for (int i = 0; i < 6; ++i) {
        const double step = std::numbers::pi / 18;
        arc = joined(arc, Path{{arcCubic(10, i * step, (i + 1) * step)}});
    }
    EXPECT_NEAR((arc.end() - arc.start()).norm(), 10, 1e-12);
    EXPECT_NEAR((pointAt(arc, {3, 0}) - (arc.start() + arc.end()) / 2).norm(), 1.33974596, 5e-9);
    EXPECT_NEAR(lengthMm(arc), 10.47197551, 1.5e-8);
}

TEST(ArcLength, straightPieces) {
    EXPECT_NEAR(lengthMm(straightCubic({-300, 400}, {0, 0})), 500, 1e-12);
    EXPECT_EQ(lengthMm(Cubic{{7, 7}, {7, 7}, {7, 7}, {7, 7}}), 0);
    // Forth and back: x' = 3 (3 - 16 t + 16 t^2) for x = 0, 3, -2, 1; turns at t = 1/4 and 3/4,
    // where x = 1 and 0.
    EXPECT_NEAR(lengthMm(Cubic{{0, 0}, {3, 0}, {-2, 0}, {1, 0}}), 3, 1e-9);
}

TEST(ArcLength, cuspsHaveTheirClosedForm) {
    EXPECT_NEAR(lengthMm(semicubicalParabola(-1, 1)), 2 * semicubicalLength(1), 1e-9);
    EXPECT_NEAR(lengthMm(semicubicalParabola(-1, 2)), semicubicalLength(1) + semicubicalLength(2),
                1e-9);
    EXPECT_NEAR(lengthMm(semicubicalParabola(0, 5)), semicubicalLength(5), 1e-9);
    Cubic large = semicubicalParabola(-7, 3);  // 343 + 27 mm high
    EXPECT_NEAR(lengthMm(large), semicubicalLength(7) + semicubicalLength(3), 1e-9);
}

TEST(ArcLength, curvesThatAlmostHaveACusp) {
    for (const double loose : {1e-2, 1e-4, 1e-6, 1e-9}) {
        Cubic c = semicubicalParabola(-5, 5);
        c.p1.y() -= loose;
        c.p2.y() += loose;
        const double expected = independentLengthMm(c, 0, 0.5) + independentLengthMm(c, 0.5, 1);
        EXPECT_NEAR(lengthMm(c), expected, 1e-8) << loose;
    }
}

TEST(ArcLength, randomCurvesAgreeWithIndependentIntegration) {
    RandomCurves random(11);
    double worst = 0;
    for (int i = 0; i < 400; ++i) {
        const Cubic c = random.cubic(700);
        const double error = std::abs(lengthMm(c) - independentLengthMm(c));
        worst = std::max(worst, error);
        EXPECT_LT(error, 1e-8) << written(c);
    }
    RecordProperty("worstErrorMm", std::to_string(worst));
}

TEST(ArcLength, partsAddUp) {
    RandomCurves random(12);
    for (int i = 0; i < 300; ++i) {
        const Cubic c = random.cubic(700);
        const double t = random.number(0, 1);
        const auto [left, right] = splitAt(c, t);
        EXPECT_NEAR(partLengthMm(c, 0, t), lengthMm(left), 1e-9) << written(c) << " " << t;
        EXPECT_NEAR(partLengthMm(c, t, 1), lengthMm(right), 1e-9) << written(c) << " " << t;
        EXPECT_NEAR(lengthMm(left) + lengthMm(right), lengthMm(c), 1e-9) << written(c);
        EXPECT_NEAR(lengthMm(reversed(c)), lengthMm(c), 1e-9) << written(c);
    }
}

TEST(ArcLength, parameterIsFoundAgain) {
    RandomCurves random(13);
    std::vector<Cubic> curves{semicubicalParabola(-5, 5),
                              {{0, 0}, {0, 0}, {50, 90}, {90, 90}},
                              {{0, 0}, {3, 0}, {-2, 0}, {1, 0}}};
    for (int i = 0; i < 300; ++i) curves.push_back(random.cubic(700));
    for (const Cubic& c : curves) {
        const double total = lengthMm(c);
        for (int k = 0; k <= 16; ++k) {
            const double wanted = total * k / 16;
            const double t = parameterAtLength(c, wanted, total);
            EXPECT_NEAR(partLengthMm(c, 0, t), wanted, 1e-9) << written(c) << " " << wanted;
        }
        EXPECT_EQ(parameterAtLength(c, -1, total), 0);
        EXPECT_EQ(parameterAtLength(c, total + 1, total), 1);
    }
}

}  // namespace
}  // namespace coutil
