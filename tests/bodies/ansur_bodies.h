#pragma once

#include <vector>

#include "core/measurements/measurement_set.h"

namespace coutil::bodies {

// The 993 women of tests/data/bodies/ansur2_women_a.csv, in the order of the file, completed to
// what a corset needs. Measured as they are: bust, hip, neck base, shoulder, across back, upper
// arm, stature; the girth at the navel as top hip girth, at its own height; heights of bust point,
// armpit and buttocks. Completed (see ansur_bodies.cpp): the natural waist, its height and girth,
// under-bust girth and height. Not there, so that estimates are exercised: upper chest girth, bust
// point width, waist to lap. Throws std::runtime_error when the files cannot be read.
[[nodiscard]] std::vector<MeasurementSet> ansurBodies();

// The same women with nothing but what completeBody() insists on (hip and waist to hip below the
// waist).
[[nodiscard]] std::vector<MeasurementSet> ansurBodiesNeededOnly();

}  // namespace coutil::bodies
