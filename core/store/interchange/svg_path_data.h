#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/geometry/path.h"

namespace coutil::interchange {

// One stretch of a path's data, from a move to the next.
struct SvgStretch {
    Path path;  // in the units of the document, y as it stands there
    bool isClosed = false;
};

// The stretches of a path's "d": lines, cubic and quadratic curves, absolute and relative, smooth
// ones too, quadratic ones as the same curve in cubic form; a closing line is added where the ends
// do not meet. Nothing for what is no path data, and for elliptic arcs: no line of a pattern is
// one.
[[nodiscard]] std::optional<std::vector<SvgStretch>> readPathData(std::string_view data);

}  // namespace coutil::interchange
