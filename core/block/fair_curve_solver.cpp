#include <cmath>
#include <cstddef>
#include <utility>

#include "core/block/monotone_line.h"
#include "core/block/suppression_curve.h"
#include "core/geometry/tolerances.h"

// Which constraints the values at the levels put on the curve, and the search for where its bend
// changes sign. What the rows mean is told in fair_curve_rows.cpp.
namespace coutil {

struct FairCurveSolver::Shape {
    std::vector<double> valuesMm;
    std::vector<double> secants;      // per interval between levels, mm per kFairUnitMm
    std::vector<std::size_t> turnIn;  // intervals in which the slope has its local extremes
    std::vector<std::size_t> turnAt;  // the knots where the bend changes sign, one per turnIn
    double firstSign = 0;             // sign of the bend below the first turn; 0: all flat
};

FairCurveSolver::Shape FairCurveSolver::shapeOf(const std::vector<double>& valuesMm) const {
    Shape shape;
    shape.valuesMm = valuesMm;
    for (std::size_t i = 0; i + 1 < valuesMm.size(); ++i) {
        const double riseMm = valuesMm[i + 1] - valuesMm[i];
        const double stepMm = knotsMm_[levelKnots_[i + 1]] - knotsMm_[levelKnots_[i]];
        shape.secants.push_back(
            std::abs(riseMm) < tolerance::kSamePointMm ? 0 : riseMm / stepMm * kFairUnitMm);
    }
    findTurns(shape, shape.secants);
    return shape;
}

// The slope has to rise and fall as these slopes do, from upright below the lowest level on.
void FairCurveSolver::findTurns(Shape& shape, const std::vector<double>& slopes) {
    shape.turnIn.clear();
    double before = 0;
    double direction = 0;
    for (std::size_t i = 0; i < slopes.size(); ++i) {
        const double change = slopes[i] - before;
        before = slopes[i];
        if (std::abs(change) <= tolerance::kConstraintRelative) continue;
        const double turnedTo = change > 0 ? 1 : -1;
        if (direction == 0) shape.firstSign = turnedTo;
        if (direction * turnedTo < 0) shape.turnIn.push_back(i - 1);
        direction = turnedTo;
    }
}

// In an interval at whose end the curve turns, the slope is 0 there, so elsewhere it must exceed
// the secant; by about a quarter where the corner is not to be sharp.
std::vector<double> FairCurveSolver::steepenedAtTurns(const std::vector<double>& secants) {
    constexpr double kSteeper = 1.25;
    std::vector<double> slopes = secants;
    for (std::size_t i = 0; i + 1 < secants.size(); ++i) {
        if (secants[i] * secants[i + 1] >= 0) continue;
        slopes[i] *= kSteeper;
        slopes[i + 1] *= kSteeper;
    }
    return slopes;
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
        for (std::size_t k = best; k < levelKnots_[interval + 1]; ++k) {
            if (sign * minimum.rowValues[slopeRow(k)] > sign * minimum.rowValues[slopeRow(best)])
                best = k;
        }
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
        for (std::size_t c = 0; c < constraints.size(); ++c) {
            if (!constraints[c].isEquality && constraints[c].row == bendRow(knot))
                return minimum.multipliers[c] > tolerance::kConstraintRelative;
        }
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

// The fairest curve whose bend changes sign at the shape's turns; the turns move where that helps.
std::optional<ConstrainedMinimum> FairCurveSolver::fairestWithTurns(
    Shape& shape, const std::vector<LinearConstraint>& monotone) const {
    std::optional<ConstrainedMinimum> best;
    for (std::size_t round = 0; round < knotsMm_.size(); ++round) {
        std::vector<LinearConstraint> constraints = monotone;
        addBends(shape, constraints);
        ConstrainedMinimum next = constrainedMinimum(gram_, constraints);
        if (!next.isFeasible) break;
        best = std::move(next);
        if (!moveTurns(shape, constraints, *best)) break;
    }
    return best;
}

ConstrainedMinimum FairCurveSolver::fairest(Shape& shape) const {
    std::vector<LinearConstraint> monotone = levelConstraints(shape);
    addMonotone(shape, monotone);
    ConstrainedMinimum free = constrainedMinimum(gram_, monotone);
    if (!free.isFeasible || bendsAsAsked(shape, free)) return free;
    startTurns(shape, free);
    if (const auto best = fairestWithTurns(shape, monotone)) return *best;
    // So few turns would need a corner sharper than the knots allow.
    findTurns(shape, steepenedAtTurns(shape.secants));
    startTurns(shape, free);
    return fairestWithTurns(shape, monotone).value_or(free);
}

// Smooth and monotone but not fair: for heights and values so wild that the solver finds nothing.
SuppressionCurve FairCurveSolver::plainThrough(const std::vector<double>& valuesMm) const {
    MonotoneLine line;
    for (std::size_t level = 0; level < levelKnots_.size(); ++level)
        line.add(knotsMm_[levelKnots_[level]], valuesMm[level]);
    SuppressionCurve curve;
    for (const double heightMm : knotsMm_) {
        const ValueAndSlope place = line.at(heightMm, LineEnd::level, LineEnd::level);
        curve.knots.push_back({heightMm, place.y, place.slope});
    }
    return curve;
}

SuppressionCurve FairCurveSolver::through(const std::vector<double>& valuesMm) const {
    Shape shape = shapeOf(valuesMm);
    SuppressionCurve curve;
    if (shape.firstSign == 0) {
        for (const double y : knotsMm_) curve.knots.push_back({y, valuesMm.front(), 0});
        return curve;
    }
    const ConstrainedMinimum minimum = fairest(shape);
    if (!minimum.isFeasible) return plainThrough(valuesMm);
    for (std::size_t k = 0; k < knotsMm_.size(); ++k) {
        curve.knots.push_back({knotsMm_[k], valuesMm.front() + minimum.rowValues[riseRow(k)],
                               minimum.rowValues[slopeRow(k)] / kFairUnitMm});
    }
    for (std::size_t level = 0; level < levelKnots_.size(); ++level)
        curve.knots[levelKnots_[level]].valueMm = valuesMm[level];
    return curve;
}

}  // namespace coutil
