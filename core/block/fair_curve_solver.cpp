#include <algorithm>
#include <cmath>

#include <Eigen/Cholesky>

#include "core/block/suppression_curve.h"
#include "core/geometry/tolerances.h"

// The unknowns are the second derivatives g_k at the inner knots; they are linear in between, so
// f''' is constant on a piece and the integral of f'''^2 is the sum of (g_k+1 - g_k)^2 / h_k. The
// first and the last g are 0 (the curve runs out straight) and so is the first slope. Everything
// else is linear in g: "rise" f(knot) - f(lowest level), "slope" f'(knot), "middle" the middle
// Bezier coefficient of f' on a piece (if it and both end slopes have one sign, so has f'
// everywhere), and "bend" g itself.
namespace coutil {
namespace {

constexpr double kUnitMm = 100;        // lengths are scaled so that the numbers stay near 1
constexpr double kPieceMm = 22;        // about how long one piece is
constexpr double kRunOutBelowMm = 90;  // below the lowest level, until the curve stands upright
constexpr double kRunOutAboveMm = 50;  // above the highest level, until the curve is straight
constexpr std::size_t kRunOutPieces = 2;

std::size_t piecesFor(double lengthMm) {
    return static_cast<std::size_t>(std::clamp(std::lround(lengthMm / kPieceMm), 3L, 5L));
}

}  // namespace

struct FairCurveSolver::Shape {
    std::vector<double> valuesMm;
    std::vector<double> secants;      // per interval between levels, mm per kUnitMm
    std::vector<std::size_t> turnIn;  // intervals in which the slope has its local extremes
    std::vector<std::size_t> turnAt;  // the knots where the bend changes sign, one per turnIn
    double firstSign = 0;             // sign of the bend below the first turn; 0: all flat
};

FairCurveSolver::FairCurveSolver(const std::vector<double>& levelHeightsMm) {
    placeKnots(levelHeightsMm);
    buildGram();
}

void FairCurveSolver::placeKnots(const std::vector<double>& levelHeightsMm) {
    const auto addPieces = [this](double fromMm, double toMm, std::size_t count) {
        for (std::size_t i = 0; i < count; ++i)
            knotsMm_.push_back(fromMm + (toMm - fromMm) * static_cast<double>(i) /
                                            static_cast<double>(count));
    };
    addPieces(levelHeightsMm.front() - kRunOutBelowMm, levelHeightsMm.front(), kRunOutPieces);
    for (std::size_t level = 0; level + 1 < levelHeightsMm.size(); ++level) {
        levelKnots_.push_back(knotsMm_.size());
        const double lengthMm = levelHeightsMm[level + 1] - levelHeightsMm[level];
        addPieces(levelHeightsMm[level], levelHeightsMm[level + 1], piecesFor(lengthMm));
    }
    levelKnots_.push_back(knotsMm_.size());
    addPieces(levelHeightsMm.back(), levelHeightsMm.back() + kRunOutAboveMm, kRunOutPieces);
    knotsMm_.push_back(levelHeightsMm.back() + kRunOutAboveMm);
    for (std::size_t k = 0; k + 1 < knotsMm_.size(); ++k)
        stepScaled_.push_back((knotsMm_[k + 1] - knotsMm_[k]) / kUnitMm);
}

Eigen::Index FairCurveSolver::riseRow(std::size_t knot) const {
    return static_cast<Eigen::Index>(knot);
}
Eigen::Index FairCurveSolver::slopeRow(std::size_t knot) const {
    return static_cast<Eigen::Index>(knotsMm_.size() + knot);
}
Eigen::Index FairCurveSolver::bendRow(std::size_t knot) const {
    return static_cast<Eigen::Index>(2 * knotsMm_.size() + knot);
}
Eigen::Index FairCurveSolver::middleRow(std::size_t piece) const {
    return static_cast<Eigen::Index>(3 * knotsMm_.size() + piece);
}

void FairCurveSolver::buildGram() {
    const auto knots = static_cast<Eigen::Index>(knotsMm_.size());
    Eigen::MatrixXd rows = Eigen::MatrixXd::Zero(4 * knots - 1, knots);
    Eigen::MatrixXd hessian = Eigen::MatrixXd::Zero(knots, knots);
    for (std::size_t k = 0; k < knotsMm_.size(); ++k)
        rows(bendRow(k), static_cast<Eigen::Index>(k)) = 1;
    for (std::size_t k = 0; k + 1 < knotsMm_.size(); ++k) {
        const double h = stepScaled_[k];
        const Eigen::RowVectorXd bend = rows.row(bendRow(k));
        const Eigen::RowVectorXd nextBend = rows.row(bendRow(k + 1));
        const Eigen::RowVectorXd slope = rows.row(slopeRow(k));
        rows.row(slopeRow(k + 1)) = slope + h / 2 * (bend + nextBend);
        rows.row(riseRow(k + 1)) =
            rows.row(riseRow(k)) + h * slope + h * h / 6 * (2 * bend + nextBend);
        rows.row(middleRow(k)) = slope + h / 2 * bend;
        hessian += (nextBend - bend).transpose() * (nextBend - bend) / h;
    }
    const Eigen::RowVectorXd atLowest = rows.row(riseRow(levelKnots_.front()));
    rows.topRows(knots).rowwise() -= atLowest;
    const Eigen::Index inner = knots - 2;
    const Eigen::MatrixXd free = rows.middleCols(1, inner);
    const Eigen::LLT<Eigen::MatrixXd> factor(hessian.block(1, 1, inner, inner));
    const Eigen::MatrixXd half = factor.matrixL().solve(free.transpose());
    gram_.noalias() = half.transpose() * half;
}

FairCurveSolver::Shape FairCurveSolver::shapeOf(const std::vector<double>& valuesMm) const {
    Shape shape;
    shape.valuesMm = valuesMm;
    double slopeBefore = 0;  // upright below the lowest level
    double direction = 0;
    for (std::size_t i = 0; i + 1 < valuesMm.size(); ++i) {
        const double riseMm = valuesMm[i + 1] - valuesMm[i];
        const double stepMm = knotsMm_[levelKnots_[i + 1]] - knotsMm_[levelKnots_[i]];
        const double secant =
            std::abs(riseMm) < tolerance::kSamePointMm ? 0 : riseMm / stepMm * kUnitMm;
        shape.secants.push_back(secant);
        const double change = secant - slopeBefore;
        if (std::abs(change) > tolerance::kConstraintRelative) {
            const double turnedTo = change > 0 ? 1 : -1;
            if (direction == 0) shape.firstSign = turnedTo;
            if (direction * turnedTo < 0) shape.turnIn.push_back(i - 1);
            direction = turnedTo;
        }
        slopeBefore = secant;
    }
    return shape;
}

std::vector<LinearConstraint> FairCurveSolver::levelConstraints(const Shape& shape) const {
    std::vector<LinearConstraint> constraints;
    const auto equal = [&](Eigen::Index row, double value) {
        constraints.push_back({row, 1, value, true});
    };
    const auto& secants = shape.secants;
    const auto isFlat = [&](std::size_t i) { return secants[i] == 0; };
    for (std::size_t i = 0; i < secants.size(); ++i) {
        const bool followsFlat = i > 0 && isFlat(i - 1);
        if (isFlat(i)) {
            // Straight and upright over the whole interval; the rise follows from that.
            if (!followsFlat) equal(slopeRow(levelKnots_[i]), 0);
            for (std::size_t k = levelKnots_[i] + (followsFlat ? 1 : 0); k <= levelKnots_[i + 1];
                 ++k)
                equal(bendRow(k), 0);
            continue;
        }
        equal(riseRow(levelKnots_[i + 1]), shape.valuesMm[i + 1] - shape.valuesMm.front());
        const bool isTurn = i > 0 && !followsFlat && secants[i - 1] * secants[i] < 0;
        if (isTurn) equal(slopeRow(levelKnots_[i]), 0);
    }
    return constraints;
}

void FairCurveSolver::addMonotone(const Shape& shape,
                                  std::vector<LinearConstraint>& constraints) const {
    for (std::size_t i = 0; i < shape.secants.size(); ++i) {
        const double secant = shape.secants[i];
        if (secant == 0) continue;
        const double sign = secant > 0 ? 1 : -1;
        for (std::size_t k = levelKnots_[i]; k < levelKnots_[i + 1]; ++k) {
            constraints.push_back({slopeRow(k), sign, 0, false});
            constraints.push_back({middleRow(k), sign, 0, false});
        }
        constraints.push_back({slopeRow(levelKnots_[i + 1]), sign, 0, false});
    }
}

void FairCurveSolver::addBends(const Shape& shape,
                               std::vector<LinearConstraint>& constraints) const {
    double sign = shape.firstSign;
    std::size_t turn = 0;
    for (std::size_t k = 1; k + 1 < knotsMm_.size(); ++k) {
        if (turn < shape.turnAt.size() && k == shape.turnAt[turn]) {
            sign = -sign;
            ++turn;
            continue;
        }
        constraints.push_back({bendRow(k), sign, 0, false});
    }
}

// Where the free curve has the steepest slope inside the interval of each turn.
void FairCurveSolver::startTurns(Shape& shape, const ConstrainedMinimum& minimum) const {
    double sign = shape.firstSign;
    shape.turnAt.clear();
    for (const std::size_t interval : shape.turnIn) {
        std::size_t best = levelKnots_[interval] + 1;
        for (std::size_t k = best; k < levelKnots_[interval + 1]; ++k)
            if (sign * minimum.rowValues[slopeRow(k)] > sign * minimum.rowValues[slopeRow(best)])
                best = k;
        shape.turnAt.push_back(best);
        sign = -sign;
    }
}

bool FairCurveSolver::bendsAsAsked(const Shape& shape, const ConstrainedMinimum& minimum) const {
    double sign = shape.firstSign;
    std::size_t changes = 0;
    for (std::size_t k = 1; k + 1 < knotsMm_.size(); ++k) {
        const double bend = minimum.rowValues[bendRow(k)];
        if (sign * bend < -tolerance::kConstraintRelative) {
            sign = -sign;
            ++changes;
        }
    }
    return changes <= shape.turnIn.size();
}

// A turn whose neighbour is held at 0 by its sign wants to lie there: the curve gets fairer.
bool FairCurveSolver::moveTurns(Shape& shape, const std::vector<LinearConstraint>& constraints,
                                const ConstrainedMinimum& minimum) const {
    const auto isHeld = [&](std::size_t knot) {
        for (std::size_t c = 0; c < constraints.size(); ++c)
            if (!constraints[c].isEquality && constraints[c].row == bendRow(knot))
                return minimum.multipliers[c] > tolerance::kConstraintRelative;
        return false;
    };
    bool hasMoved = false;
    double signBefore = shape.firstSign;
    for (std::size_t t = 0; t < shape.turnAt.size(); ++t, signBefore = -signBefore) {
        const std::size_t at = shape.turnAt[t];
        const double bend = signBefore * minimum.rowValues[bendRow(at)];
        const bool isRoomAbove = t + 1 == shape.turnAt.size() || at + 2 < shape.turnAt[t + 1];
        const bool isRoomBelow = t == 0 || shape.turnAt[t - 1] + 2 < at;
        if (bend >= 0 && at + 2 < knotsMm_.size() && isRoomAbove && isHeld(at + 1)) {
            shape.turnAt[t] = at + 1;
            hasMoved = true;
        } else if (bend <= 0 && at > 2 && isRoomBelow && isHeld(at - 1)) {
            shape.turnAt[t] = at - 1;
            hasMoved = true;
        }
    }
    return hasMoved;
}

ConstrainedMinimum FairCurveSolver::fairest(Shape& shape) const {
    std::vector<LinearConstraint> monotone = levelConstraints(shape);
    addMonotone(shape, monotone);
    const ConstrainedMinimum free = constrainedMinimum(gram_, monotone);
    if (bendsAsAsked(shape, free)) return free;
    startTurns(shape, free);
    ConstrainedMinimum best = free;
    for (std::size_t round = 0; round < knotsMm_.size(); ++round) {
        std::vector<LinearConstraint> constraints = monotone;
        addBends(shape, constraints);
        ConstrainedMinimum next = constrainedMinimum(gram_, constraints);
        if (!next.isFeasible) break;
        best = std::move(next);
        if (!moveTurns(shape, constraints, best)) break;
    }
    return best;
}

SuppressionCurve FairCurveSolver::through(const std::vector<double>& valuesMm) const {
    Shape shape = shapeOf(valuesMm);
    SuppressionCurve curve;
    if (shape.firstSign == 0) {
        for (const double y : knotsMm_) curve.knots.push_back({y, valuesMm.front(), 0});
        return curve;
    }
    const ConstrainedMinimum minimum = fairest(shape);
    for (std::size_t k = 0; k < knotsMm_.size(); ++k)
        curve.knots.push_back({knotsMm_[k], valuesMm.front() + minimum.rowValues[riseRow(k)],
                               minimum.rowValues[slopeRow(k)] / kUnitMm});
    for (std::size_t level = 0; level < levelKnots_.size(); ++level)
        curve.knots[levelKnots_[level]].valueMm = valuesMm[level];
    return curve;
}

}  // namespace coutil
