#pragma once

#include <string>

#include "app/command_line/draft_input.h"
#include "app/command_line/id_source.h"
#include "core/problems/problem.h"
#include "core/revision/folio.h"

namespace coutil {

// What a new garment is called and how its records are made.
struct NewGarment {
    std::string name;           // empty: "Corset", with a number when that is taken
    std::string client;         // label of a new folio
    std::string date;           // ISO 8601
    bool isRepeatable = false;  // ids follow from the content and the date, not from chance
};

// Enters a measurement set, unless the folio holds the same one already; returns its id there. Sets
// stay in the order of their dates.
std::string enterMeasurementSet(Folio& folio, MeasurementSet set, const IdSource& ids);

// The folio with one more garment drafted from the input; a folio without id is new. A measurement
// set that the folio holds already is not entered twice. Problem: garmentTaken.
[[nodiscard]] Outcome<Folio> withGarment(Folio folio, const DraftInput& input,
                                         const NewGarment& garment);

}  // namespace coutil
