#include <algorithm>

#include "core/geometry/tolerances.h"
#include "core/pattern/pattern.h"

namespace coutil {

std::optional<Point> pointAtSeamPosition(const Edge& edge, double positionMm) {
    if (!edge.waistMarkAtMm || edge.path.isEmpty()) return std::nullopt;
    const double fromStartMm = *edge.waistMarkAtMm + (edge.runsUp ? positionMm : -positionMm);
    const double wholeMm = lengthMm(edge.path);
    // A position that was read off the edge's own end must find it again.
    if (fromStartMm < -tolerance::kSamePointMm || fromStartMm > wholeMm + tolerance::kSamePointMm)
        return std::nullopt;
    return pointAtLength(edge.path, std::clamp(fromStartMm, 0.0, wholeMm));
}

SeamLengths seamLengthsOf(const Edge& edge) {
    const double wholeMm = lengthMm(edge.path);
    if (!edge.waistMarkAtMm) return {};
    const double beforeMm = *edge.waistMarkAtMm;
    const double afterMm = wholeMm - beforeMm;
    return edge.runsUp ? SeamLengths{.aboveWaistMm = afterMm, .belowWaistMm = beforeMm}
                       : SeamLengths{.aboveWaistMm = beforeMm, .belowWaistMm = afterMm};
}

}  // namespace coutil
