#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/block/style.h"
#include "core/measurements/measurement_set.h"
#include "core/units/length.h"

namespace coutil {

// A revision still being worked on. Drafted from one measurement set and one style.
struct Pencil {
    std::string id;              // UUID
    std::string startedOn;       // ISO 8601 date
    std::string measurementSet;  // id of the set
    Style style;

    bool operator==(const Pencil&) const = default;
};

// One block and everything that became of it. Confirmed revisions and fittings join it with the fit
// history.
struct Garment {
    std::string id;  // UUID
    std::string name;
    std::string createdOn;  // ISO 8601 date
    Pencil pencil;

    bool operator==(const Garment&) const = default;
};

// One client: the value a .coutil file holds.
struct Folio {
    std::string id;      // UUID
    std::string client;  // label as the maker writes it
    std::string note;
    LengthUnit unit = LengthUnit::centimetre;     // the maker's unit
    std::vector<MeasurementSet> measurementSets;  // in the order of their dates
    std::vector<Garment> garments;

    bool operator==(const Folio&) const = default;
};

[[nodiscard]] const MeasurementSet* findMeasurementSet(const Folio& folio, const std::string& id);
[[nodiscard]] const Garment* findGarment(const Folio& folio,
                                         const std::string& name);  // by name; nullptr if unknown

}  // namespace coutil
