#include "core/alterations/height_warp.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "core/alterations/merge_pieces.h"

namespace coutil {
namespace {

constexpr double kAsNearMm = 1e-12;

struct WarpedPlace {
    Point at = Point::Zero();
    Vector derivative = Vector::Zero();
};

WarpedPlace warpedAt(const Cubic& piece, double t, const HeightWarp& warp) {
    const Point from = pointAt(piece, t);
    const Vector d = derivativeAt(piece, t);
    const HeightValue up = warp.height(from.y());
    const HeightValue aside = warp.sideways ? warp.sideways(from.y()) : HeightValue{};
    return {{from.x() + aside.valueMm, up.valueMm},
            {d.x() + aside.perMm * d.y(), up.perMm * d.y()}};
}

void warpPiece(const Cubic& piece, const HeightWarp& warp, std::vector<MovedPiece>& pieces) {
    const double pieceMm = lengthMm(piece);
    const int parts = std::max(1, static_cast<int>(std::ceil(pieceMm / kLongestWarpedMm)));
    WarpedPlace from = warpedAt(piece, 0, warp);
    for (int k = 0; k < parts; ++k) {
        const WarpedPlace to = warpedAt(piece, (k + 1.0) / parts, warp);
        const double third = 1.0 / (3 * parts);
        const Point start = pieces.empty() ? from.at : pieces.back().piece.p3;
        pieces.push_back(
            {{start, from.at + from.derivative * third, to.at - to.derivative * third, to.at},
             pieceMm / parts,
             true});
        from = to;
    }
}

}  // namespace

Path warped(const Path& path, const HeightWarp& warp) {
    std::vector<MovedPiece> pieces;
    for (const Cubic& piece : path.pieces) {
        const Box box = boundsOf(piece);
        if (box.highest.y() <= warp.lowestMm || box.lowest.y() >= warp.highestMm) {
            if (!pieces.empty() && pieces.back().hasMoved) pieces.back().piece.p3 = piece.p0;
            pieces.push_back({piece, 0, false});
        } else {
            warpPiece(piece, warp, pieces);
        }
    }
    return mergedWhereMoved(pieces, 2 * kLongestWarpedMm);
}

HeightValue smoothRise(double share) {
    if (share <= 0) return {0, 0};
    if (share >= 1) return {1, 0};
    const double s = share;
    return {s * s * s * (10 + s * (6 * s - 15)), 30 * s * s * (1 - s) * (1 - s)};
}

HeightValue wayBack(const std::function<HeightValue(double)>& there, double heightMm, double lowMm,
                    double highMm) {
    double low = std::min(lowMm, highMm);
    double high = std::max(lowMm, highMm);
    double found = (low + high) / 2;
    constexpr int kMostSteps = 80;
    for (int step = 0; step < kMostSteps; ++step) {
        const HeightValue at = there(found);
        const double over = at.valueMm - heightMm;
        (over > 0 ? high : low) = found;
        double next = found - over / at.perMm;
        if (!(next >= low && next <= high)) next = (low + high) / 2;
        if (std::abs(next - found) < kAsNearMm) break;
        found = next;
    }
    return {found, 1 / there(found).perMm};
}

}  // namespace coutil
