#pragma once

#include <vector>

#include "core/store/interchange/piece.h"

namespace coutil::interchange {

// The pieces as a machine cuts them from one layer: one on the fold is unfolded, and with
// `mirroredToo` every mirrored pair has its twin beside it, called "2 mirrored". Side by side.
[[nodiscard]] std::vector<Piece> cutterPieces(const std::vector<Tracing>& tracings,
                                              bool mirroredToo);

}  // namespace coutil::interchange
