#include "core/alterations/run_on_curve.h"

#include <algorithm>
#include <cmath>

#include "core/alterations/cut_edge.h"

namespace coutil {
namespace {

constexpr double kSharpestRadiusMm = 150;
constexpr double kCurvedMm = 40;
// As in the style: an edge ends at least so far from the waist mark.
constexpr double kLeastBesideWaistMm = 10;

Vector turned(const Vector& v, double rad) {
    return {v.x() * std::cos(rad) - v.y() * std::sin(rad),
            v.x() * std::sin(rad) + v.y() * std::cos(rad)};
}

// A circular arc from a point along `out`, as one cubic; k is the known handle length 4/3 tan(a/4).
Cubic arcFrom(const Point& start, const Vector& out, double curvaturePerMm, double byMm) {
    const double angle = curvaturePerMm * byMm;
    constexpr double kStraightRad = 1e-9;
    if (std::abs(angle) < kStraightRad) return straightCubic(start, start + out * byMm);
    const double handleMm = 4.0 / 3 * std::tan(angle / 4) / curvaturePerMm;
    const Vector normal(-out.y(), out.x());
    const Vector end = turned(out, angle);
    const Point to =
        start + (std::sin(angle) * out + (1 - std::cos(angle)) * normal) / curvaturePerMm;
    return {start, start + out * handleMm, to - end * handleMm, to};
}

void runOn(Path& path, double byMm) {
    const Cubic& last = path.pieces.back();
    constexpr double kMost = 1 / kSharpestRadiusMm;
    const double bend = std::clamp(curvaturePerMmAt(last, 1), -kMost, kMost);
    path.pieces.push_back(arcFrom(last.p3, tangentAt(last, 1), bend, std::min(byMm, kCurvedMm)));
    if (byMm <= kCurvedMm) return;
    const Cubic& arc = path.pieces.back();
    path.pieces.push_back(straightCubic(arc.p3, arc.p3 + tangentAt(arc, 1) * (byMm - kCurvedMm)));
}

}  // namespace

UpwardEdge runOnCurve(const UpwardEdge& edge, EdgeLine end, double byMm) {
    UpwardEdge longer = edge;
    if (end == EdgeLine::top) {
        runOn(longer.path, byMm);
        return longer;
    }
    Path downwards = reversed(edge.path);
    runOn(downwards, byMm);
    longer.path = reversed(downwards);
    longer.waistAtMm += byMm;
    return longer;
}

std::optional<UpwardEdge> endMoved(const UpwardEdge& edge, EdgeLine end, double byMm) {
    SeamLengths lengths{lengthMm(edge.path) - edge.waistAtMm, edge.waistAtMm};
    double& changing = end == EdgeLine::top ? lengths.aboveWaistMm : lengths.belowWaistMm;
    changing += byMm;
    if (changing < kLeastBesideWaistMm) return std::nullopt;
    // The arc is a cubic: what it misses of its length is cut or run on.
    return cutToLengths(byMm > 0 ? runOnCurve(edge, end, byMm) : edge, lengths);
}

}  // namespace coutil
