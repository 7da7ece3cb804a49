#pragma once

#include <functional>
#include <string>

#include "core/revision/folio.h"

namespace coutil {

// A folio with a changed pencil, and which pencil that is.
struct PencilChange {
    Folio folio;
    std::string pencil;  // id; empty: there was nothing to change
    bool isBegun = false;
};

// What is on the table: one pencil (id) or one revision (digest), the other empty.
struct ShownState {
    std::string pencil;
    std::string revision;
};

// What a folio that takes the place of another shows: a pencil that was not there before (begun, or
// back by undo); where the one shown is gone, the revision it came from; else what was shown.
[[nodiscard]] ShownState shownAfter(const Folio& before, const Folio& after, int garmentIndex,
                                    const ShownState& shown);

// The pencil `shown` of a garment, edited; or, where a revision is shown, a pencil begun from it
// today and edited.
[[nodiscard]] PencilChange withPencilChanged(const Folio& folio, int garmentIndex,
                                             const std::string& shown, const Revision* revision,
                                             const std::function<void(Pencil&)>& edit);

// One more measurement set, a copy of `source` taken today, that the pencil takes from now on. Sets
// stay in the order of their dates.
[[nodiscard]] PencilChange withNewSet(const Folio& folio, int garmentIndex,
                                      const std::string& shown, const Revision* revision,
                                      const MeasurementSet& source);

// Readings typed while `shown` (or a revision) is on the table. Those of a block are corrected in
// their set; what was confirmed keeps its own, so that a new set of today begins and the pencil
// takes it.
[[nodiscard]] PencilChange withReadings(const Folio& folio, int garmentIndex,
                                        const std::string& shown, const Revision* revision,
                                        const MeasurementSet& set);

}  // namespace coutil
