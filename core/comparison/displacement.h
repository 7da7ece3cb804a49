#pragma once

#include <optional>
#include <vector>

#include "core/geometry/path.h"

namespace coutil::comparison {

// How far one path lies to the right of another (outside, for an edge of a panel), measured from a
// place on the first square to it. Prepared once for many places of one edge.
class DisplacedPath {
  public:
    explicit DisplacedPath(Path path);

    // Signed mm along `right` (unit length) from p to the path, the nearest if it is met more than
    // once; nothing where it is not met within kFarthestMm. Error below 1e-9 mm.
    [[nodiscard]] std::optional<double> alongMm(const Point& p, const Vector& right) const;

    static constexpr double kFarthestMm = 150;

  private:
    Path path_;
};

}  // namespace coutil::comparison
