#pragma once

#include <string>
#include <vector>

#include "core/alterations/alteration.h"
#include "core/revision/folio.h"

namespace coutil {

// A revision by its digest, or (digest empty) a pencil by its id.
struct StateRef {
    std::string digest{};
    std::string pencil{};
};

// An alteration with the revision that brought it: number 0 and an empty date for a pencil, the
// garment's name where it is from another garment. Why and from which marks is in the alteration.
struct DatedAlteration {
    Alteration alteration{};
    int revision = 0;
    std::string garment{};
    std::string confirmedOn{};
    std::string note{};
};

// What was altered between two states. Both lines of parents are followed back to the revision
// they share; with a branch both `onlyInA` (given up on the way to b) and `onlyInB` are filled.
// Switched off alterations are left out: they did nothing.
struct AlterationsBetween {
    std::string commonAncestor{};            // digest; empty: two blocks of their own
    std::vector<DatedAlteration> onlyInA{};  // in order
    std::vector<DatedAlteration> onlyInB{};
    bool stylesDiffer = false;  // in force at a and b
    bool measurementsDiffer = false;
    // One block under both, allowances apart: compare with Registration::ownFrame.
    bool isSameBlock = false;
};

// A state that is not in the folio counts as an empty one.
[[nodiscard]] AlterationsBetween alterationsBetween(const Folio& folio, const StateRef& a,
                                                    const StateRef& b);

}  // namespace coutil
