#pragma once

#include "core/geometry/path.h"

namespace coutil {

// The same curve with its joints moved along it, so that no piece is too short to keep its
// directions on the ink grid (tolerance::kShortForInkMm), where a neighbour has length to spare and
// goes smoothly on. As many pieces as before; the curve moves by less than a tenth of a step.
[[nodiscard]] Path withRoomForInk(const Path& path);

}  // namespace coutil
