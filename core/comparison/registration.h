#pragma once

#include "core/comparison/comparison.h"

namespace coutil::comparison {

// The shift that lays panel b on panel a. Exactly zero where both are laid as they were drawn.
[[nodiscard]] Vector shiftOnto(const Panel& a, const Panel& b, Registration how);

}  // namespace coutil::comparison
