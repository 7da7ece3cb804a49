#pragma once

#include <map>
#include <vector>

#include "core/measurements/measurement.h"
#include "core/problems/problem.h"

namespace coutil {

// Pairs of readings no body can have together (errors) or hardly (warnings): measurementsContradict
// with subject and detail the two measurements and the figures "value", "other" and the limit the
// first must keep because of the second, "lowest" or "highest".
[[nodiscard]] std::vector<Problem> contradictionsIn(const std::map<Measurement, double>& valuesMm);

}  // namespace coutil
