#pragma once

#include <map>
#include <optional>
#include <string_view>
#include <vector>

#include "core/measurements/measurement.h"

namespace coutil {

// What a published relation makes of other readings: the expected value and the standard error of
// the relation, mm.
struct Expectation {
    double valueMm = 0;
    double sdMm = 0;
    std::vector<Measurement> from;
    std::string_view source;
};

// The value expected for `id` given the others, used both to check a reading and to stand in for a
// missing one. Nothing where no relation is known or its inputs are absent. Never uses the reading
// of `id` itself.
[[nodiscard]] std::optional<Expectation> expectedFrom(const std::map<Measurement, double>& valuesMm,
                                                      Measurement id);

// How much of the difference between waist and hip girth is there at a share (0 at the waist, 1 at
// the hip) of the way down. Straight lines through published places: 0.275 at 0.341 (ANSUR 1988,
// means of girths and heights at natural waist, navel and buttocks) and 0.838 at 0.667 (The
// Practical Corsetiere, p. 40 and p. 52: first hip 6 in, second hip 9 in below the waist).
[[nodiscard]] double hipSpringShare(double downShare);

}  // namespace coutil
