#pragma once

#include <optional>

#include "core/alterations/alteration.h"
#include "core/pattern/pattern.h"

namespace coutil {

// True when left and right have panels of their own.
[[nodiscard]] bool isWhole(const Pattern& pattern);

// The same pattern with left and right panels of their own: first all left ones, front to back,
// then the right ones, each drawn as the half was (front on the left), so that sides stay
// comparable panel by panel. Seams are doubled likewise. A pattern that is whole comes back as it
// is.
[[nodiscard]] Pattern wholeOf(const Pattern& pattern);

// One half again, from one side or the mean of both (edge by edge, at equal shares of length).
// Nothing where the sides do not have the same panels, edges and seams.
[[nodiscard]] std::optional<Pattern> symmetricOf(const Pattern& pattern, SymmetrySource source);

}  // namespace coutil
