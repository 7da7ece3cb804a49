#pragma once

#include <QString>
#include <vector>

#include "core/measurements/measurement.h"

namespace coutil {

// The catalogue as the Measure bench lists it: girths, heights over the waist, widths and lengths;
// in each the needed ones first, else in the order a maker measures. Together every measurement
// once.
struct MeasurementGroup {
    QString title;
    std::vector<Measurement> ids;
};
[[nodiscard]] std::vector<MeasurementGroup> measurementGroups();

}  // namespace coutil
