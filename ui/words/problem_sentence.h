#pragma once

#include <QString>

#include "core/problems/problem.h"
#include "core/units/length.h"

namespace coutil {

// The one place where problems become sentences: what, where, what to do; in the user's language,
// lengths in `unit`.
[[nodiscard]] QString problemSentence(const Problem& problem, LengthUnit unit);

}  // namespace coutil
