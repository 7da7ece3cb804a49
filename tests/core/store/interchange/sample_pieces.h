#pragma once

#include <string>
#include <vector>

#include "core/pattern/pattern.h"
#include "core/tracing/tracing.h"

namespace coutil::samples {

// A corset of the wardrobe's singer, drafted; its front on the fold so that every kind of line
// appears.
[[nodiscard]] Pattern corset();
// A drafted pattern with its tracings.
struct Sample {
    std::string name;
    Pattern pattern;
    std::vector<Tracing> tracings;
};
// The corset above and others of several bodies of ANSUR II, over all panel counts, closures,
// shapes of the edges and widths of allowances.
[[nodiscard]] std::vector<Sample> all();

// Its tracings.
[[nodiscard]] std::vector<Tracing> tracings();
[[nodiscard]] TracingTitle title();

}  // namespace coutil::samples
