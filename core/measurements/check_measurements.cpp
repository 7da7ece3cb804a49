#include <array>
#include <cmath>
#include <iterator>
#include <string>

#include "core/measurements/body.h"
#include "core/measurements/body_relations.h"
#include "core/measurements/contradictions.h"

namespace coutil {

namespace {

// A reading further from its expectation than this many standard errors is worth a second look:
// one true reading in some two thousand.
constexpr double kImprobableDeviations = 3.5;

// Readings that relations speak for firmly enough to doubt a tape.
constexpr std::array kComparedReadings{
    Measurement::underBustGirth,  Measurement::upperChestGirth, Measurement::waistGirth,
    Measurement::topHipGirth,     Measurement::hipGirth,        Measurement::neckBaseGirth,
    Measurement::acrossBackWidth, Measurement::bustPointWidth,  Measurement::upperArmGirth};

Problem rangeProblem(ProblemCode code, Severity severity, const MeasurementInfo& info,
                     double valueMm, double lowestMm, double highestMm) {
    Problem problem;
    problem.code = code;
    problem.severity = severity;
    problem.subject = info.key;
    problem.figures = {{"value", valueMm}, {"lowest", lowestMm}, {"highest", highestMm}};
    return problem;
}

Problem improbableProblem(Measurement id, double valueMm, const Expectation& expected) {
    Problem problem;
    problem.code = ProblemCode::measurementImprobable;
    problem.severity = Severity::warning;
    problem.subject = keyOf(id);
    for (const Measurement from : expected.from) {
        if (!problem.detail.empty()) problem.detail += ' ';
        problem.detail += keyOf(from);
    }
    problem.figures = {
        {"value", valueMm},
        {"expected", expected.valueMm},
        {"spread", expected.sdMm},
        {"deviations", (valueMm - expected.valueMm) / expected.sdMm, FigureUnit::count}};
    return problem;
}

// Impossible readings, and the readings left over when they are set aside.
std::map<Measurement, double> possibleReadings(const MeasurementSet& set,
                                               std::vector<Problem>& problems) {
    std::map<Measurement, double> possible;
    for (const auto& [id, valueMm] : set.valuesMm) {
        const MeasurementInfo& info = infoOf(id);
        if (std::isfinite(valueMm) && valueMm >= info.lowestMm && valueMm <= info.highestMm) {
            possible.emplace(id, valueMm);
            continue;
        }
        problems.push_back(rangeProblem(ProblemCode::measurementImpossible, Severity::error, info,
                                        valueMm, info.lowestMm, info.highestMm));
    }
    return possible;
}

void compareWithUsual(const std::map<Measurement, double>& valuesMm,
                      std::vector<Problem>& problems) {
    for (const auto& [id, valueMm] : valuesMm) {
        const MeasurementInfo& info = infoOf(id);
        if (valueMm >= info.usualLowestMm && valueMm <= info.usualHighestMm) continue;
        problems.push_back(rangeProblem(ProblemCode::measurementImprobable, Severity::warning, info,
                                        valueMm, info.usualLowestMm, info.usualHighestMm));
    }
}

void compareWithOthers(const std::map<Measurement, double>& valuesMm,
                       std::vector<Problem>& problems) {
    for (const Measurement id : kComparedReadings) {
        const auto found = valuesMm.find(id);
        if (found == valuesMm.end()) continue;
        const auto expected = expectedFrom(valuesMm, id);
        if (!expected) continue;
        if (std::abs(found->second - expected->valueMm) <= kImprobableDeviations * expected->sdMm)
            continue;
        problems.push_back(improbableProblem(id, found->second, *expected));
    }
}

}  // namespace

std::vector<Problem> checkMeasurements(const MeasurementSet& set) {
    std::vector<Problem> problems;
    const auto possible = possibleReadings(set, problems);
    auto contradictions = contradictionsIn(possible);
    problems.insert(problems.end(), std::make_move_iterator(contradictions.begin()),
                    std::make_move_iterator(contradictions.end()));
    compareWithUsual(possible, problems);
    compareWithOthers(possible, problems);
    return problems;
}

}  // namespace coutil
