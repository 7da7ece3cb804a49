#pragma once

#include "core/pattern/pattern.h"
#include "core/problems/problem.h"
#include "core/revision/folio.h"
#include "core/tracing/tracing.h"

namespace coutil {

// Everything that follows from a pencil: what the window shows and the command line prints. A stage
// that failed and those after it are absent; problems of all stages are in order.
struct GarmentOutcome {
    std::optional<Body> body;
    std::optional<Pattern> pattern;
    std::optional<std::vector<Tracing>> tracings;
    std::vector<Problem> problems;
};

// Runs the river from measurements to tracings.
[[nodiscard]] GarmentOutcome draftGarment(const MeasurementSet& set, const Style& style);

}  // namespace coutil
