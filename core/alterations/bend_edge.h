#pragma once

#include "core/geometry/path.h"

namespace coutil {

// The path with what lies beyond a length from its start turned by `rad` (counter-clockwise); it
// bends smoothly over `overMm` around that place and no length changes (below 1e-6 mm). What lies
// before the bend stays bit for bit.
struct BentPath {
    Path path;
    Placement beyond;  // where the part beyond the bend has come to
};
[[nodiscard]] BentPath bentPath(const Path& path, double atMm, double overMm, double rad);

}  // namespace coutil
