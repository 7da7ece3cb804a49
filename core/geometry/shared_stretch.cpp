#include "core/geometry/shared_stretch.h"

#include <algorithm>
#include <vector>

#include "core/geometry/closest_on_piece.h"
#include "core/geometry/contact_refinement.h"
#include "core/geometry/tolerances.h"

namespace coutil {

namespace {

bool isNear(const Point& a, const Point& b) { return (a - b).norm() <= tolerance::kTouchMm; }

// Two different cubics share at most nine points (Bezout), so this many between the ends decide.
bool isSharedBetween(const Cubic& first, const Cubic& second, double t0, double t1) {
    constexpr int kSamples = 9;
    for (int i = 1; i <= kSamples; ++i) {
        const Point p = pointAt(first, t0 + (t1 - t0) * i / (kSamples + 1));
        if (!isNear(p, pointAt(second, closestParameter(second, p)))) return false;
    }
    return true;
}

}  // namespace

std::optional<PieceContact> sharedStretch(const Cubic& first, const Cubic& second) {
    std::vector<ParameterPair> commonEnds;
    for (const double t : {0.0, 1.0}) {
        const Point onFirst = pointAt(first, t);
        const double s = closestParameter(second, onFirst);
        if (isNear(onFirst, pointAt(second, s))) commonEnds.push_back({t, s});
        const Point onSecond = pointAt(second, t);
        const double u = closestParameter(first, onSecond);
        if (isNear(onSecond, pointAt(first, u))) commonEnds.push_back({u, t});
    }
    if (commonEnds.size() < 2) return std::nullopt;
    const auto [start, end] = std::minmax_element(
        commonEnds.begin(), commonEnds.end(),
        [](const ParameterPair& a, const ParameterPair& b) { return a.first < b.first; });
    const double chordMm = (pointAt(first, end->first) - pointAt(first, start->first)).norm();
    if (chordMm <= tolerance::kSamePointMm ||
        !isSharedBetween(first, second, start->first, end->first)) {
        return std::nullopt;
    }
    return PieceContact{start->first, end->first, start->second, end->second};
}

}  // namespace coutil
