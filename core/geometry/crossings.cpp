#include <cmath>

#include "core/geometry/bernstein_roots.h"
#include "core/geometry/path.h"

namespace coutil {

namespace {

// An end within rounding of the level lies on it.
double snapped(double aboveMm) { return std::abs(aboveMm) <= tolerance::kOnLevelMm ? 0 : aboveMm; }

}  // namespace

std::vector<PathPosition> crossingsAtHeight(const Path& path, double heightMm) {
    std::vector<PathPosition> crossings;
    const auto append = [&](std::size_t piece, double t) {
        // The end of one piece and the start of the next are one place.
        if (!crossings.empty() && t == 0 && crossings.back().t == 1 &&
            crossings.back().piece + 1 == piece) {
            return;
        }
        crossings.push_back({piece, t});
    };
    for (std::size_t i = 0; i < path.pieces.size(); ++i) {
        const Cubic& c = path.pieces[i];
        const Bernstein<3> above{snapped(c.p0.y() - heightMm), snapped(c.p1.y() - heightMm),
                                 snapped(c.p2.y() - heightMm), snapped(c.p3.y() - heightMm)};
        if (above == Bernstein<3>{}) {
            append(i, 0);
            append(i, 1);
            continue;
        }
        for (const double t : rootsOf<3>(above)) append(i, t);
    }
    return crossings;
}

}  // namespace coutil
