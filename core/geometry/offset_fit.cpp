#include <algorithm>
#include <cmath>

#include "core/geometry/cross_product.h"
#include "core/geometry/offset_chain.h"
#include "core/geometry/tolerances.h"

namespace coutil {

namespace {

constexpr int kDeepestHalving = 10;

// A place of the offset of a piece with its derivative: offset' = piece' (1 + width * curvature),
// the curvature taken positive where the piece turns to the left.
struct OffsetState {
    double t = 0;
    Point point;
    Vector derivative;
};

class PieceFit {
  public:
    PieceFit(const Cubic& piece, double widthMm) : piece_(piece), widthMm_(widthMm) {}

    [[nodiscard]] OffsetState stateAt(double t) const {
        const Vector along = tangentAt(piece_, t);
        const double stretch = 1 + widthMm_ * curvaturePerMmAt(piece_, t);
        return {t, pointAt(piece_, t) + widthMm_ * Vector(along.y(), -along.x()),
                stretch * derivativeAt(piece_, t)};
    }

    // The cubic with the offset's points and derivatives at both ends keeps its parameter too, so
    // its distance from the offset is bounded by the distance at equal parameters, largest near the
    // middle; it falls sixteenfold with every halving.
    void append(const OffsetState& a, const OffsetState& b, int depth, Path& path) const {
        const double third = (b.t - a.t) / 3;
        const Cubic fit{a.point, a.point + third * a.derivative, b.point - third * b.derivative,
                        b.point};
        if (depth < kDeepestHalving && !isClose(fit, a.t, b.t)) {
            const OffsetState middle = stateAt((a.t + b.t) / 2);
            append(a, middle, depth + 1, path);
            append(middle, b, depth + 1, path);
            return;
        }
        path.pieces.push_back(fit);
    }

  private:
    [[nodiscard]] bool isClose(const Cubic& fit, double from, double to) const {
        constexpr double kProbes[] = {0.5, 0.25, 0.75};
        return std::all_of(std::begin(kProbes), std::end(kProbes), [&](double share) {
            const double t = from + share * (to - from);
            const Vector along = tangentAt(piece_, t);
            const Point at = pointAt(piece_, t) + widthMm_ * Vector(along.y(), -along.x());
            return (pointAt(fit, share) - at).squaredNorm() <=
                   tolerance::kOffsetFitMm * tolerance::kOffsetFitMm;
        });
    }

    const Cubic& piece_;
    double widthMm_;
};

bool isStraight(const Cubic& piece) {
    const Vector chord = piece.p3 - piece.p0;
    const Vector across(-chord.y(), chord.x());
    const double wide = std::max(std::abs(across.dot(piece.p1 - piece.p0)),
                                 std::abs(across.dot(piece.p2 - piece.p0)));
    return wide <= tolerance::kSamePointMm * chord.norm() && chord.dot(piece.p1 - piece.p0) >= 0 &&
           chord.dot(piece.p3 - piece.p2) >= 0;
}

}  // namespace

void appendStraight(const Point& a, const Point& b, Path& path) {
    if (a == b) return;
    if (!path.isEmpty() && isStraight(path.pieces.back())) {
        const Vector before = path.pieces.back().p3 - path.pieces.back().p0;
        const Vector after = b - a;
        const bool goesOn =
            before.dot(after) > 0 && std::abs(crossProduct(before, after)) <=
                                         tolerance::kSmoothTurn * before.norm() * after.norm();
        if (goesOn) {
            path.pieces.back() = straightCubic(path.pieces.back().p0, b);
            return;
        }
    }
    path.pieces.push_back(straightCubic(a, b));
}

void appendFitted(const OffsetChain& chain, std::size_t first, std::size_t last, Path& path) {
    const PathPosition from = chain.places[first];
    const PathPosition to = chain.places[last];
    Point start = chain.points[first];
    for (std::size_t k = from.piece; k <= to.piece; ++k) {
        const double t0 = k == from.piece ? from.t : 0;
        const double t1 = k == to.piece ? to.t : 1;
        if (t0 >= t1) continue;
        const Cubic& piece = chain.pieces[k];
        const PieceFit fit(piece, chain.widthMm);
        OffsetState a = fit.stateAt(t0);
        OffsetState b = fit.stateAt(t1);
        a.point = start;
        if (k == to.piece) b.point = chain.points[last];
        start = b.point;
        if (isStraight(piece)) {
            appendStraight(a.point, b.point, path);
        } else if (chain.widthMm == 0) {
            Cubic part = between(piece, t0, t1);
            part.p0 = a.point;
            part.p3 = b.point;
            path.pieces.push_back(part);
        } else {
            fit.append(a, b, 0, path);
        }
    }
}

}  // namespace coutil
