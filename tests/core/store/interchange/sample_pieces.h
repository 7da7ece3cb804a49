#pragma once

#include <vector>

#include "core/pattern/pattern.h"
#include "core/tracing/tracing.h"

namespace coutil::samples {

// A corset of the wardrobe's singer, drafted; its front on the fold so that every kind of line
// appears.
[[nodiscard]] Pattern corset();
// Its tracings.
[[nodiscard]] std::vector<Tracing> tracings();
[[nodiscard]] TracingTitle title();

}  // namespace coutil::samples
