#include <algorithm>
#include <array>

#include "core/measurements/body.h"
#include "core/measurements/body_relations.h"

namespace coutil {

namespace {

// Room kept between a level that was measured and an estimated one next to it, mm: common
// practice, no source.
constexpr double kArmpitOverBustMm = 20;
constexpr double kHipUnderHighHipMm = 40;

Problem missing(Measurement id, std::string_view standIn = {}) {
    Problem problem;
    problem.code = ProblemCode::measurementMissing;
    problem.subject = keyOf(id);
    problem.detail = standIn;
    return problem;
}

// One girth under the waist and its height are enough; the other is estimated.
void lookForLowerGirth(const MeasurementSet& set, std::vector<Problem>& problems) {
    using enum Measurement;
    const bool hasTopHip = set.valuesMm.contains(topHipGirth);
    const bool hasHip = set.valuesMm.contains(hipGirth);
    const bool isTopHipPlaced = hasTopHip && set.valuesMm.contains(waistToHighHip);
    const bool isHipPlaced = hasHip && set.valuesMm.contains(waistToHip);
    if (isTopHipPlaced || isHipPlaced) return;
    if (!hasTopHip && !hasHip) {
        problems.push_back(missing(hipGirth, keyOf(topHipGirth)));
        if (!set.valuesMm.contains(waistToHip) && !set.valuesMm.contains(waistToHighHip)) {
            problems.push_back(missing(waistToHip, keyOf(waistToHighHip)));
        }
        return;
    }
    if (hasHip) {
        problems.push_back(missing(waistToHip, hasTopHip ? keyOf(waistToHighHip) : ""));
    } else {
        problems.push_back(missing(waistToHighHip));
    }
}

std::vector<Problem> missingIn(const MeasurementSet& set) {
    using enum Measurement;
    std::vector<Problem> problems;
    for (const Measurement id :
         {bustGirth, underBustGirth, waistGirth, waistToUnderBust, waistToBust}) {
        if (!set.valuesMm.contains(id)) problems.push_back(missing(id));
    }
    lookForLowerGirth(set, problems);
    return problems;
}

// An estimate knows only averages; the order of the levels on this body is certain.
double keptInOrderMm(const Body& body, Measurement id, double valueMm) {
    using enum Measurement;
    if (id == waistToArmpit)
        return std::max(valueMm, body.valueMm(waistToBust) + kArmpitOverBustMm);
    if (id == waistToHip && body.has(waistToHighHip)) {
        return std::max(valueMm, body.valueMm(waistToHighHip) + kHipUnderHighHipMm);
    }
    return valueMm;
}

void estimateInto(Body& body, Measurement id) {
    if (body.has(id)) return;
    const auto expected = expectedFrom(body.valuesMm, id);
    if (!expected) return;
    Estimate estimate;
    estimate.id = id;
    estimate.valueMm = keptInOrderMm(body, id, expected->valueMm);
    estimate.sdMm = expected->sdMm;
    estimate.from = expected->from;
    estimate.source = expected->source;
    body.valuesMm[id] = estimate.valueMm;
    body.estimates.push_back(std::move(estimate));
}

}  // namespace

Outcome<Body> completeBody(const MeasurementSet& set) {
    std::vector<Problem> problems = missingIn(set);
    auto doubts = checkMeasurements(set);
    problems.insert(problems.end(), doubts.begin(), doubts.end());
    if (std::ranges::any_of(problems, isError)) return Outcome<Body>::failed(std::move(problems));

    Body body;
    body.valuesMm = set.valuesMm;
    // Heights before the girths that are placed by them, hip before top hip.
    for (const Measurement id :
         {Measurement::upperChestGirth, Measurement::bustPointWidth, Measurement::waistToArmpit,
          Measurement::waistToHip, Measurement::waistToHighHip, Measurement::hipGirth,
          Measurement::topHipGirth, Measurement::waistToLap}) {
        estimateInto(body, id);
    }
    return {std::move(body), std::move(problems)};
}

}  // namespace coutil
