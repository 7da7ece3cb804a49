#pragma once

#include <string>
#include <vector>

#include "core/revision/confirm.h"
#include "core/revision/folio.h"

namespace coutil::test {

// An invented singer's folio with one garment, whose block is still in pencil (id "block").
[[nodiscard]] inline Folio blockFolio(const MeasurementSet& body) {
    Folio folio;
    folio.id = "folio";
    folio.client = "Soubrette";
    folio.measurementSets = {body};
    folio.measurementSets[0].id = "set of March";
    folio.garments.push_back({.id = "g1", .name = "act one", .createdOn = "2026-03-03"});
    folio.garments[0].pencils.push_back(
        {.id = "block", .startedOn = "2026-03-03", .measurementSet = "set of March", .style = {}});
    return folio;
}

[[nodiscard]] inline Alteration takenIn(const std::string& id, const std::string& seam, double mm) {
    return {.id = id, .change = ShapeSeam{.seam = seam, .amounts = {{35, mm}}}, .why = "loose"};
}

// The pencil of that id confirmed with a pattern, no errors standing.
[[nodiscard]] inline Outcome<Folio> confirmedOn(const Folio& folio, const std::string& pencil,
                                                const Pattern& pattern, const std::string& date,
                                                const WriteRecipe& write) {
    return pencilConfirmed(folio, 0, pencil, {pattern, {}}, {date, "wardrobe", "note of " + date},
                           write);
}

}  // namespace coutil::test
