#pragma once

#include <vector>

#include "core/geometry/cubic.h"

namespace coutil {

// A place where two pieces meet, or a stretch on which they run along each other. The second
// piece's parameter belongs to the same end as the first's and may fall along the stretch.
struct PieceContact {
    double firstStart = 0;
    double firstEnd = 0;
    double secondStart = 0;
    double secondEnd = 0;

    [[nodiscard]] bool isStretch() const { return firstEnd > firstStart; }
};

// All contacts of two pieces, ordered along the first; places err by less than 1e-6 mm. Pieces
// nearer than tolerance::kTouchMm touch; stretches shorter than tolerance::kSamePointMm are places.
[[nodiscard]] std::vector<PieceContact> contactsOf(const Cubic& first, const Cubic& second);

}  // namespace coutil
