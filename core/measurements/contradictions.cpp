#include "core/measurements/contradictions.h"

#include <optional>
#include <string>

namespace coutil {

namespace {

// `first` must keep between these parts of `second`.
struct PairRule {
    Measurement first{};
    Measurement second{};
    std::optional<double> lowestPart;
    std::optional<double> highestPart;
    Severity severity = Severity::error;
};

// Levels lie in their order, what is part of a length is shorter than it, and a width across one
// side of the body is less than its share of the girth there. The shares are common practice, no
// source; they are wide enough for every body of ANSUR II.
const std::vector<PairRule>& pairRules() {
    using enum Measurement;
    static const std::vector<PairRule> rules{
        {waistToUnderBust, waistToBust, {}, 1, Severity::error},
        {waistToBust, waistToArmpit, {}, 1, Severity::error},
        {waistToHighHip, waistToHip, {}, 1, Severity::error},
        {bustPointWidth, bustGirth, {}, 0.5, Severity::error},
        {frontBustArc, bustGirth, 0.35, 0.75, Severity::error},
        {acrossBackWidth, bustGirth, {}, 0.6, Severity::error},
        {acrossFrontWidth, bustGirth, {}, 0.6, Severity::error},
        {scyeDepth, backNeckToWaist, {}, 1, Severity::error},
        {sideNeckToBustPoint, sideNeckOverBustToWaist, {}, 1, Severity::error},
        {frontNeckToWaist, sideNeckOverBustToWaist, {}, 1, Severity::error},
        // The side line runs over the hip: never much shorter than the drop, seldom a third longer.
        {sideWaistToHip, waistToHip, 0.9, 1.35, Severity::warning},
        {backNeckToWaist, stature, 0.15, 0.35, Severity::warning},
    };
    return rules;
}

Problem contradiction(const PairRule& rule, double firstMm, double secondMm, Figure limit) {
    Problem problem;
    problem.code = ProblemCode::measurementsContradict;
    problem.severity = rule.severity;
    problem.subject = keyOf(rule.first);
    problem.detail = keyOf(rule.second);
    problem.figures = {{"value", firstMm}, {"other", secondMm}, std::move(limit)};
    return problem;
}

}  // namespace

std::vector<Problem> contradictionsIn(const std::map<Measurement, double>& valuesMm) {
    std::vector<Problem> problems;
    for (const PairRule& rule : pairRules()) {
        const auto first = valuesMm.find(rule.first);
        const auto second = valuesMm.find(rule.second);
        if (first == valuesMm.end() || second == valuesMm.end()) continue;
        const double firstMm = first->second;
        const double secondMm = second->second;
        // At the limit itself a level would coincide with the next: no room between them.
        if (rule.highestPart && firstMm >= *rule.highestPart * secondMm) {
            problems.push_back(
                contradiction(rule, firstMm, secondMm, {"highest", *rule.highestPart * secondMm}));
        } else if (rule.lowestPart && firstMm <= *rule.lowestPart * secondMm) {
            problems.push_back(
                contradiction(rule, firstMm, secondMm, {"lowest", *rule.lowestPart * secondMm}));
        }
    }
    return problems;
}

}  // namespace coutil
