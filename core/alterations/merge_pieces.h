#pragma once

#include <vector>

#include "core/geometry/path.h"

namespace coutil {

// A piece of an edge that was moved; `lengthMm` (about) only where it has moved.
struct MovedPiece {
    Cubic piece;
    double lengthMm = 0;
    bool hasMoved = false;
};

// The pieces as one path, moved neighbours joined wherever one cubic with the same end points and
// end directions stays within tolerance::kMergedPieceMm and is no longer than longestMm.
[[nodiscard]] Path mergedWhereMoved(const std::vector<MovedPiece>& pieces, double longestMm);

}  // namespace coutil
