#include "core/tracing/notches.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "core/geometry/cross_product.h"
#include "core/geometry/path.h"
#include "core/geometry/tolerances.h"

namespace coutil {

namespace {

// A notch this near the end of an edge is lost in the corner's allowance.
constexpr double kClearOfEndMm = 15;
// Tried in this order; common practice is a hand's breadth or less from the waist, no source.
constexpr std::array kBalanceMm{40.0, 55.0, 25.0, 70.0, 15.0};

// Whether the edge turned upside down has its notches elsewhere: the waist notch comes to lie
// `below` from the top, the balance notch `below + position`.
bool tellsTopFromBottom(const SeamLengths& edge, double positionMm) {
    const double topToBalance = edge.aboveWaistMm - positionMm;
    const double topToWaist = edge.aboveWaistMm;
    const double highest = std::min(topToBalance, topToWaist);
    const double highestTurned = std::min(edge.belowWaistMm, edge.belowWaistMm + positionMm);
    return std::abs(highest - highestTurned) >= kLeastUpsideDownMm;
}

// How far the way from `from` along `outward` goes until it meets the cutting line, mm; 0 where it
// starts on it.
double wayToCuttingMm(const std::vector<Point>& cutting, const Point& from, const Vector& outward) {
    double nearest = std::numeric_limits<double>::max();
    for (std::size_t k = 0; k < cutting.size(); ++k) {
        const Vector a = cutting[k] - from;
        const Vector b = cutting[(k + 1) % cutting.size()] - from;
        const double sideA = crossProduct(outward, a);
        const double sideB = crossProduct(outward, b);
        if ((sideA > 0) == (sideB > 0)) continue;
        const double way = outward.dot(a + sideA / (sideA - sideB) * (b - a));
        if (way > -tolerance::kOffsetMm) nearest = std::min(nearest, std::max(0.0, way));
    }
    if (nearest < tolerance::kOffsetMm || nearest == std::numeric_limits<double>::max()) return 0;
    return nearest;
}

void appendNotch(const Edge& edge, NotchKind kind, double positionMm,
                 const std::vector<Point>& cutting, std::vector<Notch>& notches) {
    const double fromStartMm = *edge.waistMarkAtMm + (edge.runsUp ? positionMm : -positionMm);
    const PathPosition place = positionAtLength(edge.path, fromStartMm);
    const Vector along = tangentAt(edge.path, place);
    Notch notch;
    notch.kind = kind;
    notch.at = pointAt(edge.path, place);
    notch.outward = {along.y(), -along.x()};
    notch.lengthMm = wayToCuttingMm(cutting, notch.at, notch.outward);
    notch.edge = edge.name;
    notch.positionMm = positionMm;
    notches.push_back(notch);
}

const Seam* seamAt(const Pattern& pattern, const EdgeRef& ref) {
    const auto found =
        std::find_if(pattern.seams.begin(), pattern.seams.end(),
                     [&](const Seam& seam) { return seam.front == ref || seam.back == ref; });
    return found == pattern.seams.end() ? nullptr : &*found;
}

}  // namespace

std::optional<double> balancePositionMm(const SeamLengths& front, const SeamLengths& back) {
    const double above = std::min(front.aboveWaistMm, back.aboveWaistMm);
    const double below = std::min(front.belowWaistMm, back.belowWaistMm);
    for (const double sign : {1.0, -1.0}) {
        for (const double distance : kBalanceMm) {
            const double position = sign * distance;
            if (distance > (sign > 0 ? above : below) - kClearOfEndMm) continue;
            if (tellsTopFromBottom(front, position) && tellsTopFromBottom(back, position)) {
                return position;
            }
        }
    }
    return std::nullopt;
}

std::vector<Notch> notchesOf(const Pattern& pattern, std::size_t panel,
                             const std::vector<Point>& cutting) {
    std::vector<Notch> notches;
    const std::vector<Edge>& edges = pattern.panels[panel].edges;
    for (std::size_t e = 0; e < edges.size(); ++e) {
        const Edge& edge = edges[e];
        if (!edge.waistMarkAtMm) continue;
        const Seam* seam = seamAt(pattern, {panel, e});
        if (seam || edge.role == EdgeRole::opening) {
            appendNotch(edge, NotchKind::waist, 0, cutting, notches);
        }
        if (!seam) continue;
        const Edge& front = edgeAt(pattern, seam->front);
        const Edge& back = edgeAt(pattern, seam->back);
        if (!front.waistMarkAtMm || !back.waistMarkAtMm) continue;
        const auto position = balancePositionMm(seamLengthsOf(front), seamLengthsOf(back));
        if (position) appendNotch(edge, NotchKind::balance, *position, cutting, notches);
    }
    return notches;
}

}  // namespace coutil
