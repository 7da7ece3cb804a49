#include "core/block/seam_edge.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

#include "core/geometry/tolerances.h"

namespace coutil {
namespace {

constexpr double kRunOnMm = 250;  // straight beyond the curve's ends

// A graph x(y) that is cubic in y is a cubic Bezier piece with control points at thirds of y.
Cubic pieceBetween(const CurveKnot& a, const CurveKnot& b, double baseMm, double part) {
    const double third = (b.heightMm - a.heightMm) / 3;
    const auto at = [&](double valueMm, double heightMm) {
        return Point(baseMm + part * valueMm, heightMm);
    };
    return {at(a.valueMm, a.heightMm), at(a.valueMm + third * a.slope, a.heightMm + third),
            at(b.valueMm - third * b.slope, b.heightMm - third), at(b.valueMm, b.heightMm)};
}

CurveKnot runOn(const CurveKnot& knot, double byMm) {
    return {knot.heightMm + byMm, knot.valueMm + byMm * knot.slope, knot.slope};
}

std::size_t pieceUnder(const std::vector<double>& ends, double value) {
    const auto upper = std::upper_bound(ends.begin() + 1, ends.end() - 1, value);
    return static_cast<std::size_t>(upper - ends.begin()) - 1;
}

}  // namespace

SeamEdge seamEdge(const SuppressionCurve& curve, double baseMm, double part) {
    std::vector<CurveKnot> knots;
    knots.push_back(runOn(curve.knots.front(), -kRunOnMm));
    knots.insert(knots.end(), curve.knots.begin(), curve.knots.end());
    knots.push_back(runOn(curve.knots.back(), kRunOnMm));
    SeamEdge edge;
    edge.knotPositionMm.push_back(0);
    double waistAtMm = 0;
    for (std::size_t k = 0; k + 1 < knots.size(); ++k) {
        edge.path.pieces.push_back(pieceBetween(knots[k], knots[k + 1], baseMm, part));
        edge.knotPositionMm.push_back(edge.knotPositionMm.back() +
                                      lengthMm(edge.path.pieces.back()));
        if (std::abs(knots[k + 1].heightMm) < tolerance::kSamePointMm)
            waistAtMm = edge.knotPositionMm.back();
    }
    for (double& position : edge.knotPositionMm) position -= waistAtMm;
    return edge;
}

double positionAtHeightMm(const SeamEdge& edge, double heightMm) {
    const auto& pieces = edge.path.pieces;
    const auto above =
        std::upper_bound(pieces.begin(), pieces.end() - 1, heightMm,
                         [](double height, const Cubic& piece) { return height < piece.p3.y(); });
    const double t =
        std::clamp((heightMm - above->p0.y()) / (above->p3.y() - above->p0.y()), 0.0, 1.0);
    const auto index = static_cast<std::size_t>(above - pieces.begin());
    return edge.knotPositionMm[index] + lengthMm(between(*above, 0, t));
}

PathPosition placeAt(const SeamEdge& edge, double positionMm) {
    const std::size_t index = pieceUnder(edge.knotPositionMm, positionMm);
    const Path piece{{edge.path.pieces[index]}};
    return {index, positionAtLength(piece, positionMm - edge.knotPositionMm[index]).t};
}

Path trimmed(const SeamEdge& edge, double fromPositionMm, double toPositionMm) {
    return between(edge.path, placeAt(edge, fromPositionMm), placeAt(edge, toPositionMm));
}

}  // namespace coutil
