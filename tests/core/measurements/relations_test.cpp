// The relations behind checks and estimates, worked out again from the survey itself. Sources:
// ANSUR II (2012), the 993 women of tests/data/bodies; ANSUR 1988 (Gordon et al. 1989), means and
// standard deviations beside it. The same regressions computed once before on these data: waist
// 1.020 B - 105 (standard error 54), hip 0.682 B + 376 (51), neck base 0.169 B + 169 (13), across
// back 0.229 B + 157 (23), upper arm 0.278 B + 43 (20), on the whole set of 1,986.
#include <cmath>
#include <functional>
#include <vector>

#include <Eigen/Core>
#include <Eigen/QR>
#include <gtest/gtest.h>

#include "core/measurements/body_relations.h"
#include "tests/bodies/ansur_bodies.h"

namespace coutil {
namespace {

using enum Measurement;
using Values = std::map<Measurement, double>;

struct Regression {
    Eigen::VectorXd coefficients;  // intercept first
    double standardError = 0;
};

Regression regression(const std::function<double(const Values&)>& target,
                      const std::vector<Measurement>& on) {
    const auto women = bodies::ansurBodies();
    const auto count = static_cast<Eigen::Index>(women.size());
    const auto columns = static_cast<Eigen::Index>(on.size()) + 1;
    Eigen::MatrixXd inputs(count, columns);
    Eigen::VectorXd outputs(count);
    for (Eigen::Index row = 0; row < count; ++row) {
        const Values& values = women[static_cast<std::size_t>(row)].valuesMm;
        inputs(row, 0) = 1;
        for (Eigen::Index column = 1; column < columns; ++column) {
            inputs(row, column) = values.at(on[static_cast<std::size_t>(column) - 1]);
        }
        outputs(row) = target(values);
    }
    Regression found;
    found.coefficients = inputs.colPivHouseholderQr().solve(outputs);
    found.standardError = std::sqrt((outputs - inputs * found.coefficients).squaredNorm() /
                                    static_cast<double>(count - columns));
    return found;
}

// The relation in the program gives the regression's own value on a small and on a large body.
void expectSameRelation(Measurement id, const std::vector<Measurement>& on,
                        const Regression& found) {
    for (const double size : {0.8, 1.3}) {
        Values values;
        double wanted = found.coefficients(0);
        for (std::size_t i = 0; i < on.size(); ++i) {
            values[on[i]] = 940 * size;
            wanted += found.coefficients(static_cast<Eigen::Index>(i) + 1) * 940 * size;
        }
        const auto expected = expectedFrom(values, id);
        ASSERT_TRUE(expected.has_value()) << keyOf(id);
        EXPECT_NEAR(expected->valueMm, wanted, 0.6) << keyOf(id);
        EXPECT_NEAR(expected->sdMm, found.standardError, 0.06) << keyOf(id);
        EXPECT_EQ(expected->from, on) << keyOf(id);
    }
}

void expectRegression(Measurement id, const std::vector<Measurement>& on) {
    expectSameRelation(id, on, regression([id](const Values& v) { return v.at(id); }, on));
}

TEST(Relations, areTheRegressionsOfTheSurvey) {
    expectRegression(hipGirth, {bustGirth});
    expectRegression(hipGirth, {bustGirth, topHipGirth});
    expectRegression(neckBaseGirth, {bustGirth});
    expectRegression(acrossBackWidth, {bustGirth});
    expectRegression(upperArmGirth, {bustGirth});
}

TEST(Relations, armpitStandsOverTheBustAsInTheSurvey) {
    const auto found = regression(
        [](const Values& v) { return v.at(waistToArmpit) - v.at(waistToBust); }, {bustGirth});
    for (const double bustMm : {750.0, 1200.0}) {
        const auto expected =
            expectedFrom({{waistToBust, 120}, {bustGirth, bustMm}}, waistToArmpit);
        ASSERT_TRUE(expected.has_value());
        EXPECT_NEAR(expected->valueMm, 120 + found.coefficients(0) + found.coefficients(1) * bustMm,
                    0.6);
        EXPECT_NEAR(expected->sdMm, found.standardError, 0.06);
    }
}

// Girth at the navel on bust, carried to the natural waist by the two waists of 1988: 725.5 (63.0)
// and 791.9 (82.7).
TEST(Relations, naturalWaistFollowsTheNavelGirth) {
    const auto navel = regression([](const Values& v) { return v.at(topHipGirth); }, {bustGirth});
    EXPECT_NEAR(navel.standardError, 52.1, 0.1);
    for (const double bustMm : {750.0, 1200.0}) {
        const double navelMm = navel.coefficients(0) + navel.coefficients(1) * bustMm;
        const auto expected = expectedFrom({{bustGirth, bustMm}}, waistGirth);
        ASSERT_TRUE(expected.has_value());
        EXPECT_NEAR(expected->valueMm, 725.5 + (navelMm - 791.9) * 63.0 / 82.7, 0.6);
    }
    // What the bust leaves open, and what a correlation of 0.9 between the two waists does.
    const double carried = navel.standardError * 63.0 / 82.7;
    const double between = 63.0 * std::sqrt(1 - 0.9 * 0.9);
    EXPECT_NEAR(expectedFrom({{bustGirth, 900}}, waistGirth)->sdMm, std::hypot(carried, between),
                0.5);
}

// ANSUR 1988: bust 907.1 (63.5), under-bust 769.7 (51.0).
TEST(Relations, underBustLiesOnTheLineOfBothSpreads) {
    for (const double deviations : {-2.0, 0.0, 2.0}) {
        const auto expected =
            expectedFrom({{bustGirth, 907.1 + deviations * 63.5}}, underBustGirth);
        ASSERT_TRUE(expected.has_value());
        EXPECT_NEAR(expected->valueMm, 769.7 + deviations * 51.0, 0.2);
        EXPECT_NEAR(expected->sdMm, 51.0 * std::sqrt(2 * (1 - 0.85)), 0.2);
    }
}

// ANSUR 1988, means: heights of natural waist 1056.5, navel 982.1, buttocks 838.3; girths 725.5,
// 791.9, 966.9. The Practical Corsetiere, p. 40: waist 30, hips 39 and 41 in at 6 and 9 in; p. 52:
// 40, 46, 47.
TEST(Relations, hipSpringPassesThroughThePublishedPlaces) {
    const double navelDown = (1056.5 - 982.1) / (1056.5 - 838.3);
    EXPECT_NEAR(hipSpringShare(navelDown), (791.9 - 725.5) / (966.9 - 725.5), 0.001);
    const double corsetiere = ((39.0 - 30) / (41 - 30) + (46.0 - 40) / (47 - 40)) / 2;
    EXPECT_NEAR(hipSpringShare(6.0 / 9), corsetiere, 0.001);
    EXPECT_EQ(hipSpringShare(0), 0);
    EXPECT_EQ(hipSpringShare(1), 1);
    EXPECT_EQ(hipSpringShare(-3), 0);
    EXPECT_EQ(hipSpringShare(3), 1);
    for (double share = 0; share < 1; share += 0.01) {
        EXPECT_LT(hipSpringShare(share), hipSpringShare(share + 0.01));
    }
}

TEST(Relations, saysNothingWithoutInputs) {
    EXPECT_FALSE(expectedFrom({}, bustGirth).has_value());
    EXPECT_FALSE(expectedFrom({}, waistGirth).has_value());
    EXPECT_FALSE(expectedFrom({{waistGirth, 700}}, topHipGirth).has_value());
}

}  // namespace
}  // namespace coutil
