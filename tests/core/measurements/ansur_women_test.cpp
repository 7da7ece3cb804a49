// Every woman of a real survey is a body the program accepts. Source: ANSUR II (2012) completed by
// ANSUR 1988, see tests/data/bodies/README.md.
#include <map>
#include <string>

#include <gtest/gtest.h>

#include "core/measurements/body.h"
#include "tests/bodies/ansur_bodies.h"

namespace coutil {
namespace {

TEST(AnsurWomen, areAll993) { EXPECT_EQ(bodies::ansurBodies().size(), 993U); }

TEST(AnsurWomen, neverMeetAnError) {
    for (const MeasurementSet& set : bodies::ansurBodies()) {
        const auto body = completeBody(set);
        ASSERT_TRUE(body.hasValue()) << set.id << " " << body.problems.front().subject;
        for (const Problem& problem : body.problems) EXPECT_FALSE(isError(problem)) << set.id;
    }
}

TEST(AnsurWomen, lieInTheUsualRangesButForOneInAHundred) {
    std::map<std::string, int> outside;
    std::map<std::string, int> improbable;
    for (const MeasurementSet& set : bodies::ansurBodies()) {
        for (const Problem& problem : checkMeasurements(set)) {
            ASSERT_EQ(problem.code, ProblemCode::measurementImprobable) << set.id;
            ++(problem.detail.empty() ? outside : improbable)[problem.subject];
        }
    }
    for (const auto& [key, count] : outside) EXPECT_LE(count, 9) << key;
    for (const auto& [key, count] : improbable) EXPECT_LE(count, 9) << key;
}

TEST(AnsurWomen, keepTheirLevelsInOrderWhenHeightsAreEstimated) {
    using enum Measurement;
    for (const MeasurementSet& set : bodies::ansurBodiesNeededOnly()) {
        const auto outcome = completeBody(set);
        ASSERT_TRUE(outcome.hasValue()) << set.id;
        const Body& body = *outcome;
        EXPECT_LT(body.valueMm(waistToUnderBust), body.valueMm(waistToBust)) << set.id;
        EXPECT_LT(body.valueMm(waistToBust), body.valueMm(waistToArmpit)) << set.id;
        EXPECT_GT(body.valueMm(waistToHighHip), 0) << set.id;
        EXPECT_LT(body.valueMm(waistToHighHip), body.valueMm(waistToHip)) << set.id;
        EXPECT_EQ(body.estimates.size(), 6U) << set.id;
        for (const Estimate& estimate : body.estimates) {
            EXPECT_GT(estimate.sdMm, 0);
            EXPECT_FALSE(estimate.source.empty());
        }
    }
}

}  // namespace
}  // namespace coutil
