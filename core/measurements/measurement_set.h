#pragma once

#include <map>
#include <string>

#include "core/measurements/measurement.h"
#include "core/units/length.h"

namespace coutil {

// All readings of one day. Values are millimetres; asWritten keeps the maker's own text ("30 1/4
// in") so that it can be shown again as she typed it.
struct MeasurementSet {
    std::string id;       // UUID
    std::string takenOn;  // ISO 8601 date
    std::string takenBy;
    std::string note;
    LengthUnit unit = LengthUnit::centimetre;
    std::map<Measurement, double> valuesMm;
    std::map<Measurement, std::string> asWritten;

    bool operator==(const MeasurementSet&) const = default;
};

}  // namespace coutil
