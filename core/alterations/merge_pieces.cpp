#include "core/alterations/merge_pieces.h"

#include <array>
#include <optional>

#include "core/geometry/cross_product.h"
#include "core/geometry/tolerances.h"

namespace coutil {
namespace {

// How far a point of `piece` near parameter t lies from the curve `other`, whose parameter there is
// about u: one Newton step to the foot is enough for curves that nearly agree.
double distanceMm(const Point& point, const Cubic& other, double u) {
    const Vector along = derivativeAt(other, u);
    const Vector gap = point - pointAt(other, u);
    const double nearer = u + gap.dot(along) / along.squaredNorm();
    return (point - pointAt(other, nearer)).norm();
}

bool agrees(const Cubic& piece, const Cubic& whole, double from, double to) {
    constexpr std::array kLookedAt{0.25, 0.5, 0.75, 1.0};
    for (const double t : kLookedAt) {
        if (distanceMm(pointAt(piece, t), whole, from + (to - from) * t) >
            tolerance::kMergedPieceMm)
            return false;
    }
    return true;
}

// Undoes the cut of one cubic into two.
std::optional<Cubic> uncut(const Cubic& first, const Cubic& second) {
    const Vector in = first.p3 - first.p2;
    const Vector out = second.p1 - second.p0;
    const double inMm = in.norm();
    const double outMm = out.norm();
    if (!(inMm > 0 && outMm > 0)) return std::nullopt;
    if (crossProduct(in, out) > tolerance::kSmoothTurn * inMm * outMm ||
        crossProduct(in, out) < -tolerance::kSmoothTurn * inMm * outMm || in.dot(out) < 0)
        return std::nullopt;
    const double share = inMm / (inMm + outMm);
    const Cubic whole{first.p0, first.p0 + (first.p1 - first.p0) / share,
                      second.p3 + (second.p2 - second.p3) / (1 - share), second.p3};
    if (!agrees(first, whole, 0, share) || !agrees(second, whole, share, 1)) return std::nullopt;
    return whole;
}

}  // namespace

Path mergedWhereMoved(const std::vector<MovedPiece>& pieces, double longestMm) {
    Path path;
    double lastMm = 0;
    bool hasLastMoved = false;
    for (const MovedPiece& next : pieces) {
        if (hasLastMoved && next.hasMoved && lastMm + next.lengthMm <= longestMm) {
            if (const auto whole = uncut(path.pieces.back(), next.piece)) {
                path.pieces.back() = *whole;
                lastMm += next.lengthMm;
                continue;
            }
        }
        path.pieces.push_back(next.piece);
        lastMm = next.lengthMm;
        hasLastMoved = next.hasMoved;
    }
    return path;
}

}  // namespace coutil
