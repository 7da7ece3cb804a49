#include "core/alterations/move_edge.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "core/alterations/merge_pieces.h"
#include "core/geometry/arc_length.h"
#include "core/geometry/tolerances.h"

namespace coutil {
namespace {

// Knots nearer than this to a cut need none of their own.
constexpr double kBetweenCutsMm = 0.3;
// Of the length of a stretch at least so much must be left when it moves inwards.
constexpr double kLeastLeftShare = 0.1;

// A place on a moved curve: the point, and the derivative by the length of the unmoved curve.
struct MovedPlace {
    Point at = Point::Zero();
    Vector perMm = Vector::Zero();
    double leftShare = 1;
};

// Where a piece is cut: its parameter, the seam position, and where the place moves to.
struct Cut {
    double t = 0;
    double positionMm = 0;
    MovedPlace place;
};

class EdgeMover {
  public:
    EdgeMover(const UpwardEdge& edge, const EdgeShift& shift)
        : edge_(edge), shift_(shift), knots_(shift.knotPositions()) {}

    std::optional<Path> moved() {
        double positionMm = -edge_.waistAtMm;
        for (const Cubic& piece : edge_.path.pieces) {
            const double pieceMm = lengthMm(piece);
            if (shift_.isNothingBetween(positionMm, positionMm + pieceMm)) {
                pushUnmoved(piece, pieceMm);
            } else {
                movePiece(piece, positionMm, pieceMm);
            }
            positionMm += pieceMm;
        }
        if (isFolded_) return std::nullopt;
        return mergedWhereMoved(pieces_, 2 * kLongestMovedMm);
    }

  private:
    // Parameters at which a piece is cut, both ends included.
    [[nodiscard]] std::vector<double> cutsOf(const Cubic& piece, double fromMm,
                                             double pieceMm) const {
        std::vector<double> cutsMm{0};
        for (const double knot : knots_) {
            const double atMm = knot - fromMm;
            if (atMm > cutsMm.back() + kBetweenCutsMm && atMm < pieceMm - kBetweenCutsMm)
                cutsMm.push_back(atMm);
        }
        cutsMm.push_back(pieceMm);
        std::vector<double> cuts{0};
        for (std::size_t i = 0; i + 1 < cutsMm.size(); ++i) {
            const double to =
                i + 2 == cutsMm.size() ? 1 : parameterAtLength(piece, cutsMm[i + 1], pieceMm);
            const int parts = std::max(
                1,
                static_cast<int>(std::ceil((cutsMm[i + 1] - cutsMm[i]) / kLongestMovedMm - 0.01)));
            const double from = cuts.back();
            for (int k = 1; k < parts; ++k) cuts.push_back(from + (to - from) * k / parts);
            cuts.push_back(to);
        }
        return cuts;
    }

    [[nodiscard]] MovedPlace movedAt(const Cubic& piece, double t, double positionMm) const {
        const Vector up = tangentAt(piece, t);
        const Vector inward = inwardOf(up, edge_.hasPanelOnLeft);
        const double bend = curvaturePerMmAt(piece, t) * (edge_.hasPanelOnLeft ? 1 : -1);
        const double byMm = shift_.at(positionMm);
        const double leftShare = 1 - byMm * bend;
        return {pointAt(piece, t) + byMm * inward,
                leftShare * up + shift_.slopeAt(positionMm) * inward, leftShare};
    }

    void movePiece(const Cubic& piece, double fromMm, double pieceMm) {
        const std::vector<double> cuts = cutsOf(piece, fromMm, pieceMm);
        double positionMm = fromMm;
        MovedPlace from = movedAt(piece, 0, positionMm);
        for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
            const bool isLast = i + 2 == cuts.size();
            const double partMm = partLengthMm(piece, cuts[i], cuts[i + 1]);
            const double nextMm = isLast ? fromMm + pieceMm : positionMm + partMm;
            const MovedPlace to = movedAt(piece, cuts[i + 1], nextMm);
            isFolded_ = isFolded_ || std::min(from.leftShare, to.leftShare) < kLeastLeftShare;
            if (shift_.isNothingBetween(positionMm, nextMm)) {
                pushUnmoved(between(piece, cuts[i], cuts[i + 1]), partMm);
            } else {
                pushMoved(piece, {cuts[i], positionMm, from}, {cuts[i + 1], nextMm, to});
            }
            positionMm = nextMm;
            from = to;
        }
    }

    void pushUnmoved(const Cubic& piece, double pieceMm) {
        if (!pieces_.empty() && pieces_.back().hasMoved) pieces_.back().piece.p3 = piece.p0;
        pieces_.push_back({piece, pieceMm, false});
    }

    // One moved part of a piece; cut in the middle, and again, while its middle is off the true
    // moved curve. Derivatives are by the piece's own parameter, so that joints inside a piece stay
    // as even as they were.
    void pushMoved(const Cubic& piece, const Cut& from, const Cut& to, int halvings = 0) {
        constexpr int kMostHalvings = 4;
        const double third = (to.t - from.t) / 3;
        const Vector out = from.place.perMm * (derivativeAt(piece, from.t).norm() * third);
        const Vector in = to.place.perMm * (derivativeAt(piece, to.t).norm() * third);
        const Point start = pieces_.empty() ? from.place.at : pieces_.back().piece.p3;
        const Cubic part{start, start + out, to.place.at - in, to.place.at};
        const double t = (from.t + to.t) / 2;
        const double positionMm = from.positionMm + partLengthMm(piece, from.t, t);
        const MovedPlace middle = movedAt(piece, t, positionMm);
        if (halvings < kMostHalvings &&
            (pointAt(part, 0.5) - middle.at).norm() > tolerance::kMovedEdgeMm) {
            pushMoved(piece, from, {t, positionMm, middle}, halvings + 1);
            pushMoved(piece, {t, positionMm, middle}, to, halvings + 1);
            return;
        }
        pieces_.push_back({part, to.positionMm - from.positionMm, true});
    }

    const UpwardEdge& edge_;
    const EdgeShift& shift_;
    std::vector<double> knots_;
    std::vector<MovedPiece> pieces_;
    bool isFolded_ = false;
};

}  // namespace

std::optional<Path> movedAlongNormal(const UpwardEdge& edge, const EdgeShift& shift) {
    if (shift.isNothing()) return edge.path;
    return EdgeMover(edge, shift).moved();
}

}  // namespace coutil
