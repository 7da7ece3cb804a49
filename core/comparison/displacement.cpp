#include "core/comparison/displacement.h"

#include <cmath>
#include <utility>

#include "core/geometry/bernstein_roots.h"
#include "core/geometry/cross_product.h"

namespace coutil::comparison {

DisplacedPath::DisplacedPath(Path path) : path_(std::move(path)) {}

std::optional<double> DisplacedPath::alongMm(const Point& p, const Vector& right) const {
    std::optional<double> nearest;
    const auto offLine = [&](const Point& z) {
        const double off = right.x() * (z.y() - p.y()) - right.y() * (z.x() - p.x());
        return std::abs(off) <= tolerance::kOnLevelMm ? 0 : off;
    };
    for (const Cubic& c : path_.pieces) {
        const Bernstein<3> off{offLine(c.p0), offLine(c.p1), offLine(c.p2), offLine(c.p3)};
        if (off[0] > 0 && off[1] > 0 && off[2] > 0 && off[3] > 0) continue;
        if (off[0] < 0 && off[1] < 0 && off[2] < 0 && off[3] < 0) continue;
        for (const double t : rootsOf<3>(off)) {
            const double mm = (pointAt(c, t) - p).dot(right);
            if (std::abs(mm) <= kFarthestMm && (!nearest || std::abs(mm) < std::abs(*nearest)))
                nearest = mm;
        }
    }
    return nearest;
}

}  // namespace coutil::comparison
