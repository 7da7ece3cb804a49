#pragma once

#include "core/revision/draft_garment.h"
#include "core/revision/folio.h"

namespace coutil {

// What follows from a pencil. Without a parent: the block of its measurements and style, with its
// alterations on top. From a revision: that revision's ink with its alterations on top; but where
// the pencil brings another style or other measurements, the block is drafted from those and every
// alteration since the first block is applied to it again. What no longer fits is left out and
// named in the problems.
[[nodiscard]] GarmentOutcome pencilOutcome(const Folio& folio, const Pencil& pencil);

// What follows from a confirmed revision: its own ink, never drafted again.
[[nodiscard]] GarmentOutcome revisionOutcome(const Revision& revision);

// The pattern a pencil's own alterations are applied to, and the alterations to be applied to it;
// no pattern where the block cannot be drafted.
struct PencilBase {
    std::optional<Body> body;
    std::optional<Pattern> pattern;
    std::vector<Alteration> alterations;
    std::vector<Problem> problems;
};
[[nodiscard]] PencilBase baseOf(const Folio& folio, const Pencil& pencil);

}  // namespace coutil
