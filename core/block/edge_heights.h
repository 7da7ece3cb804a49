#pragma once

#include "core/block/corset_frame.h"
#include "core/block/draft_corset.h"

namespace coutil {

// Seam positions of the top and the bottom edge at centre front, every seam, centre back: the
// style's own where it gives them, the others from the body and the shape. In between, the line
// runs as a monotone curve of the distance from centre front.
[[nodiscard]] ResolvedHeights edgeHeights(const CorsetFrame& frame, const Body& body,
                                          const Style& style);

// Whether a top and a bottom edge at these positions can be cut: each at least 10 mm from the waist
// mark and not farther than the seams are drawn. Problems: edgeHeightImpossible, subject "top_edge"
// or "bottom_edge", detail the seam or "centre front", "centre back".
[[nodiscard]] std::vector<Problem> checkEdgeHeights(const CorsetFrame& frame,
                                                    const ResolvedHeights& heights);

}  // namespace coutil
