#pragma once

#include <map>
#include <string>
#include <vector>

#include "core/measurements/measurement_set.h"
#include "core/problems/problem.h"

namespace coutil {

// A value that was not measured: worked out from others by a published relation.
struct Estimate {
    Measurement id{};
    double valueMm = 0;
    double sdMm = 0;  // standard error of the relation
    std::vector<Measurement> from;
    std::string source;

    bool operator==(const Estimate&) const = default;
};

// A measurement set with the gaps filled by estimates; what every draft starts from.
struct Body {
    std::map<Measurement, double> valuesMm;
    std::vector<Estimate> estimates;

    [[nodiscard]] bool has(Measurement id) const { return valuesMm.contains(id); }
    [[nodiscard]] double valueMm(Measurement id) const { return valuesMm.at(id); }  // must be there
    bool operator==(const Body&) const = default;
};

// Looks at the readings alone: impossible values (errors), improbable ones given the others
// (warnings, with the expected value and its spread as figures), contradictions.
[[nodiscard]] std::vector<Problem> checkMeasurements(const MeasurementSet& set);

// The body a corset block is drafted from. Fails with measurementMissing (one problem per needed
// measurement that is absent and cannot be stood in for) or measurementImpossible. Everything else
// the corset needs is estimated and listed in Body::estimates. Warnings of checkMeasurements are
// passed on.
[[nodiscard]] Outcome<Body> completeBody(const MeasurementSet& set);

}  // namespace coutil
