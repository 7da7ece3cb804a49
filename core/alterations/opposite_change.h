#pragma once

#include <optional>

#include "core/alterations/alteration.h"
#include "core/pattern/pattern.h"

namespace coutil {

// The one change that comes nearest to taking back what `change` did: `before` is the pattern it
// met (whole where one side alone is meant), `changed` what it made of it. The opposite amounts, at
// the places where what they meant has come to; for a split, joining its seam. How near it comes is
// for the caller to see: inverseOf() corrects it. Nothing for a ShapeSeam (what it takes is found
// from the outlines) and for the kinds that have no inverse.
[[nodiscard]] std::optional<Change> oppositeOf(const Pattern& before, const Pattern& changed,
                                               BodySide side, const Change& change);

}  // namespace coutil
