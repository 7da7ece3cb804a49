#pragma once

#include <string>

#include "core/revision/folio.h"

namespace coutil {

// The readings a pencil is drafted from: the set its alterations take, else those its parent was
// confirmed from (as they were, even where the folio's set was put right since), else its block's
// set in the folio; nullptr where there is none.
[[nodiscard]] const MeasurementSet* setInForce(const Folio& folio, const Pencil& pencil);

// How a pencil comes about: the measurements and the style in force (the parent's, as they were
// then, unless the pencil brings others) and every alteration since the block that is switched on:
// the parent's, then its own. Problems: revisionParentMissing (subject: the pencil's name),
// measurementMissing where the set in force is not in the folio (subject: its id).
[[nodiscard]] Outcome<Recipe> recipeOf(const Folio& folio, const Pencil& pencil);

// Whether a style asks for another block than the one before. Allowances lie outside the panels:
// they make no other block.
[[nodiscard]] bool makesAnotherBlock(const Style& now, const Style& before);

}  // namespace coutil
