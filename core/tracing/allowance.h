#pragma once

#include "core/geometry/offset_outline.h"
#include "core/tracing/tracing.h"

namespace coutil {

// How the corner between two edges of a panel is built: where a folded-over allowance (seam,
// opening) meets a rim (top, bottom) it is turned back, so that pressed open or faced it ends edge
// to edge with the rim, bound or not; elsewhere mitred.
[[nodiscard]] CornerTreatment treatmentBetween(EdgeRole first, EdgeRole second);

}  // namespace coutil
