#pragma once

#include <optional>

#include "core/alterations/alteration.h"
#include "core/pattern/pattern.h"

namespace coutil {

// The change that takes back what `change` did to `before` (a pattern that is whole where one side
// alone is meant), for inverseOf(): proven by applying both, outlines within
// tolerance::kTakenBackMm. Nothing where there is none, or the change does not fit.
[[nodiscard]] std::optional<Change> takenBack(const Pattern& before, BodySide side,
                                              const OpenPanel& change);
[[nodiscard]] std::optional<Change> takenBack(const Pattern& before, BodySide side,
                                              const ChangeLength& change);
[[nodiscard]] std::optional<Change> takenBack(const Pattern& before, BodySide side,
                                              const ReshapeEdge& change);
[[nodiscard]] std::optional<Change> takenBack(const Pattern& before, BodySide side,
                                              const MoveLevel& change);
[[nodiscard]] std::optional<Change> takenBack(const Pattern& before, BodySide side,
                                              const MoveCorner& change);
[[nodiscard]] std::optional<Change> takenBack(const Pattern& before, BodySide side,
                                              const MoveHandle& change);

// The farthest that the outlines of two patterns with the same panels and edges lie apart, mm,
// edge by edge, to tolerance::kCheckFlatnessMm.
[[nodiscard]] double outlinesApartMm(const Pattern& first, const Pattern& second);

}  // namespace coutil
