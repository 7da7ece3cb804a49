#include "core/revision/folio.h"

#include <algorithm>

namespace coutil {

const MeasurementSet* findMeasurementSet(const Folio& folio, const std::string& id) {
    const auto found = std::find_if(folio.measurementSets.begin(), folio.measurementSets.end(),
                                    [&](const MeasurementSet& set) { return set.id == id; });
    return found == folio.measurementSets.end() ? nullptr : &*found;
}

const Garment* findGarment(const Folio& folio, const std::string& name) {
    const auto found = std::find_if(folio.garments.begin(), folio.garments.end(),
                                    [&](const Garment& garment) { return garment.name == name; });
    return found == folio.garments.end() ? nullptr : &*found;
}

}  // namespace coutil
