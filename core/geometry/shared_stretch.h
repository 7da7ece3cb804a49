#pragma once

#include <optional>

#include "core/geometry/piece_contacts.h"

namespace coutil {

// The stretch two pieces have in common, if they are parts of one curve to within
// tolerance::kTouchMm: it ends where one of them ends.
[[nodiscard]] std::optional<PieceContact> sharedStretch(const Cubic& first, const Cubic& second);

}  // namespace coutil
