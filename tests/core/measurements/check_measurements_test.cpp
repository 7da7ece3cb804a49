// Impossible, improbable and contradicting readings, and what is done about missing ones.
#include <algorithm>
#include <cmath>
#include <limits>
#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "core/measurements/body.h"

namespace coutil {
namespace {

using enum Measurement;

// A body as a community theatre's wardrobe meets it; invented.
MeasurementSet singer() {
    MeasurementSet set;
    set.valuesMm = {{bustGirth, 960},      {underBustGirth, 810}, {waistGirth, 760},
                    {hipGirth, 1030},      {waistToHip, 205},     {waistToBust, 165},
                    {waistToUnderBust, 95}};
    return set;
}

MeasurementSet singerWith(Measurement id, double mm) {
    MeasurementSet set = singer();
    set.valuesMm[id] = mm;
    return set;
}

const Problem* find(const std::vector<Problem>& problems, ProblemCode code, Measurement id) {
    const auto found = std::ranges::find_if(problems, [&](const Problem& problem) {
        return problem.code == code && problem.subject == keyOf(id);
    });
    return found == problems.end() ? nullptr : &*found;
}

double figure(const Problem& problem, const std::string& name) {
    const auto found = std::ranges::find(problem.figures, name, &Figure::name);
    return found == problem.figures.end() ? std::numeric_limits<double>::quiet_NaN() : found->value;
}

TEST(CheckMeasurements, aSoundBodyHasNoProblems) {
    EXPECT_TRUE(checkMeasurements(singer()).empty());
    EXPECT_TRUE(checkMeasurements({}).empty());
}

TEST(CheckMeasurements, impossibleValuesAreErrorsWithTheirLimits) {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    for (const double mm : {-960.0, 0.0, 96.0, 9600.0, nan, HUGE_VAL, -HUGE_VAL}) {
        const auto problems = checkMeasurements(singerWith(bustGirth, mm));
        const Problem* problem = find(problems, ProblemCode::measurementImpossible, bustGirth);
        ASSERT_NE(problem, nullptr) << mm;
        EXPECT_TRUE(isError(*problem));
        EXPECT_EQ(figure(*problem, "lowest"), infoOf(bustGirth).lowestMm);
        EXPECT_EQ(figure(*problem, "highest"), infoOf(bustGirth).highestMm);
        // An impossible reading speaks about nothing else.
        EXPECT_EQ(problems.size(), 1U) << mm;
        EXPECT_FALSE(completeBody(singerWith(bustGirth, mm)).hasValue());
    }
}

TEST(CheckMeasurements, rareValuesAreWarnings) {
    const auto problems = checkMeasurements(singerWith(stature, 2050));
    ASSERT_EQ(problems.size(), 1U);
    EXPECT_EQ(problems[0].code, ProblemCode::measurementImprobable);
    EXPECT_EQ(problems[0].severity, Severity::warning);
    EXPECT_EQ(figure(problems[0], "highest"), infoOf(stature).usualHighestMm);
    EXPECT_TRUE(completeBody(singerWith(stature, 2050)).hasValue());
}

// Readings that are usual by themselves but not together: swapped fields, a slip of the tape.
TEST(CheckMeasurements, readingsThatDoNotFitTheOthersAreWarnings) {
    const std::vector<std::pair<Measurement, double>> slips{
        {underBustGirth, 960}, {underBustGirth, 690},  {waistGirth, 1000},     {waistGirth, 590},
        {hipGirth, 810},       {hipGirth, 1250},       {upperChestGirth, 800}, {neckBaseGirth, 300},
        {upperArmGirth, 400},  {acrossBackWidth, 280}, {bustPointWidth, 260}};
    for (const auto& [id, mm] : slips) {
        const auto problems = checkMeasurements(singerWith(id, mm));
        const Problem* problem = find(problems, ProblemCode::measurementImprobable, id);
        ASSERT_NE(problem, nullptr) << keyOf(id) << " " << mm;
        EXPECT_EQ(problem->severity, Severity::warning);
        EXPECT_NE(problem->detail.find("bust_girth"), std::string::npos) << keyOf(id);
        EXPECT_EQ(figure(*problem, "value"), mm);
        const double off = (mm - figure(*problem, "expected")) / figure(*problem, "spread");
        EXPECT_GT(std::abs(off), 3.5) << keyOf(id);
        EXPECT_DOUBLE_EQ(figure(*problem, "deviations"), off);
    }
}

TEST(CheckMeasurements, topHipIsComparedWithItsNeighbours) {
    MeasurementSet set = singerWith(waistToHighHip, 90);
    set.valuesMm[topHipGirth] = 870;
    EXPECT_TRUE(checkMeasurements(set).empty());
    set.valuesMm[topHipGirth] = 1150;
    EXPECT_NE(find(checkMeasurements(set), ProblemCode::measurementImprobable, topHipGirth),
              nullptr);
}

struct Pair {
    Measurement first;
    double firstMm;
    Measurement second;
    double secondMm;
    Severity severity;
};

TEST(CheckMeasurements, contradictionsNameBothReadings) {
    const auto error = Severity::error;
    const std::vector<Pair> pairs{
        {waistToUnderBust, 165, waistToBust, 165, error},
        {waistToBust, 180, waistToArmpit, 170, error},
        {waistToHighHip, 205, waistToHip, 205, error},
        {bustPointWidth, 490, bustGirth, 960, error},
        {frontBustArc, 330, bustGirth, 960, error},
        {frontBustArc, 730, bustGirth, 960, error},
        {acrossBackWidth, 580, bustGirth, 960, error},
        {acrossFrontWidth, 580, bustGirth, 960, error},
        {scyeDepth, 390, backNeckToWaist, 380, error},
        {sideNeckToBustPoint, 440, sideNeckOverBustToWaist, 430, error},
        {frontNeckToWaist, 450, sideNeckOverBustToWaist, 440, error},
        {sideWaistToHip, 180, waistToHip, 205, Severity::warning},
        {sideWaistToHip, 280, waistToHip, 205, Severity::warning},
        {backNeckToWaist, 240, stature, 1650, Severity::warning},
    };
    for (const Pair& pair : pairs) {
        MeasurementSet set = singer();
        set.valuesMm[pair.first] = pair.firstMm;
        set.valuesMm[pair.second] = pair.secondMm;
        const auto problems = checkMeasurements(set);
        const Problem* problem = find(problems, ProblemCode::measurementsContradict, pair.first);
        ASSERT_NE(problem, nullptr) << keyOf(pair.first);
        EXPECT_EQ(problem->detail, keyOf(pair.second));
        EXPECT_EQ(problem->severity, pair.severity) << keyOf(pair.first);
        EXPECT_EQ(figure(*problem, "value"), pair.firstMm);
        EXPECT_EQ(figure(*problem, "other"), pair.secondMm);
        EXPECT_EQ(completeBody(set).hasValue(), pair.severity == Severity::warning);
    }
}

TEST(CompleteBody, namesEverythingThatIsMissing) {
    const auto empty = completeBody({});
    EXPECT_FALSE(empty.hasValue());
    for (const Measurement id : {bustGirth, underBustGirth, waistGirth, waistToUnderBust,
                                 waistToBust, hipGirth, waistToHip}) {
        EXPECT_NE(find(empty.problems, ProblemCode::measurementMissing, id), nullptr) << keyOf(id);
    }
    EXPECT_EQ(empty.problems.size(), 7U);
    EXPECT_EQ(find(empty.problems, ProblemCode::measurementMissing, hipGirth)->detail,
              "top_hip_girth");
}

TEST(CompleteBody, eitherGirthUnderTheWaistIsEnoughWithItsHeight) {
    MeasurementSet set = singer();
    EXPECT_TRUE(completeBody(set).hasValue());
    set.valuesMm.erase(waistToHip);
    EXPECT_EQ(completeBody(set).problems.at(0).subject, "waist_to_hip");
    set.valuesMm.erase(hipGirth);
    set.valuesMm[topHipGirth] = 900;
    EXPECT_EQ(completeBody(set).problems.at(0).subject, "waist_to_high_hip");
    set.valuesMm[waistToHighHip] = 90;
    EXPECT_TRUE(completeBody(set).hasValue());
    // The height of the other girth places nothing.
    set.valuesMm.erase(waistToHighHip);
    set.valuesMm[waistToHip] = 205;
    EXPECT_FALSE(completeBody(set).hasValue());
}

TEST(CompleteBody, keepsReadingsAndMarksEstimates) {
    MeasurementSet set = singerWith(waistToArmpit, 240);
    set.valuesMm[upperArmGirth] = 310;
    const auto body = completeBody(set);
    ASSERT_TRUE(body.hasValue());
    for (const auto& [id, mm] : set.valuesMm) EXPECT_EQ(body->valueMm(id), mm) << keyOf(id);
    EXPECT_EQ(body->valuesMm.size(), set.valuesMm.size() + body->estimates.size());
    for (const Estimate& estimate : body->estimates) {
        EXPECT_FALSE(set.valuesMm.contains(estimate.id)) << keyOf(estimate.id);
        EXPECT_EQ(body->valueMm(estimate.id), estimate.valueMm);
    }
    // The style's front share stands in for it; an estimate would hide that.
    EXPECT_FALSE(body->has(frontBustArc));
    for (const Measurement id :
         {upperChestGirth, topHipGirth, waistToHighHip, bustPointWidth, waistToLap}) {
        EXPECT_TRUE(body->has(id)) << keyOf(id);
    }
}

TEST(CompleteBody, estimatesStayBesideTheirNeighbours) {
    // A very low high hip pushes the estimated hip down; a high bust the armpit up.
    MeasurementSet set = singerWith(waistToHighHip, 240);
    set.valuesMm.erase(hipGirth);
    set.valuesMm.erase(waistToHip);
    set.valuesMm[topHipGirth] = 1000;
    set.valuesMm[waistToBust] = 300;
    const auto body = completeBody(set);
    ASSERT_TRUE(body.hasValue());
    EXPECT_GE(body->valueMm(waistToHip), 280);
    EXPECT_GE(body->valueMm(waistToArmpit), 320);
}

TEST(CompleteBody, passesWarningsOn) {
    const auto body = completeBody(singerWith(neckBaseGirth, 300));
    ASSERT_TRUE(body.hasValue());
    ASSERT_EQ(body.problems.size(), 1U);
    EXPECT_EQ(body.problems[0].code, ProblemCode::measurementImprobable);
}

}  // namespace
}  // namespace coutil
