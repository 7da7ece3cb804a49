#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include <Eigen/Core>

#include "core/block/dual_active_set.h"

namespace coutil {

// One knot of a piecewise cubic graph: value in mm at a height in mm, and slope (mm per mm).
struct CurveKnot {
    double heightMm = 0;
    double valueMm = 0;
    double slope = 0;
};

// The width taken out at one seam at every height, sigma(y): a piecewise cubic in y between its
// knots, continuous in curvature, straight beyond the first and last knot. Knots ascend.
struct SuppressionCurve {
    std::vector<CurveKnot> knots;

    [[nodiscard]] double valueMmAt(double heightMm) const;
};

// The solver's own unit of height, so that its numbers stay near 1.
inline constexpr double kFairUnitMm = 100;

// Draws fair curves through values at levels, as a maker would with a spline batten: least change
// of curvature (least integral of f'''^2) over all cubic splines on the levels and a few knots
// between them, such that
//   - the curve passes through the value at each level (to rounding),
//   - between two levels it is monotone: no overshoot; its turns lie on levels,
//   - its curvature changes sign no more often than the values ask for, bearing in mind that a
//     slope of 0 at a turn has to be made up for beside it,
//   - it runs out straight above the highest level, and upright below the lowest.
// One solver serves all seams of a block: what depends on the heights alone is worked out once.
class FairCurveSolver {
  public:
    // At least two heights, ascending, mm.
    explicit FairCurveSolver(const std::vector<double>& levelHeightsMm);

    // One value per level, mm.
    [[nodiscard]] SuppressionCurve through(const std::vector<double>& valuesMm) const;

  private:
    struct Shape;  // what the values ask of the curve

    [[nodiscard]] SuppressionCurve plainThrough(const std::vector<double>& valuesMm) const;
    void placeKnots(const std::vector<double>& levelHeightsMm);
    void buildGram();
    [[nodiscard]] Eigen::Index riseRow(std::size_t knot) const;
    [[nodiscard]] Eigen::Index slopeRow(std::size_t knot) const;
    [[nodiscard]] Eigen::Index middleRow(std::size_t piece) const;
    [[nodiscard]] Eigen::Index bendRow(std::size_t knot) const;
    static void findTurns(Shape& shape, const std::vector<double>& slopes);
    [[nodiscard]] static std::vector<double> steepenedAtTurns(const std::vector<double>& secants);
    [[nodiscard]] Shape shapeOf(const std::vector<double>& valuesMm) const;
    [[nodiscard]] std::vector<LinearConstraint> levelConstraints(const Shape& shape) const;
    void addMonotone(const Shape& shape, std::vector<LinearConstraint>& constraints) const;
    void addBends(const Shape& shape, std::vector<LinearConstraint>& constraints) const;
    [[nodiscard]] bool moveTurns(Shape& shape, const std::vector<LinearConstraint>& constraints,
                                 const ConstrainedMinimum& minimum) const;
    [[nodiscard]] bool bendsAsAsked(const Shape& shape, const ConstrainedMinimum& minimum) const;
    void startTurns(Shape& shape, const ConstrainedMinimum& minimum) const;
    [[nodiscard]] std::optional<ConstrainedMinimum> fairestWithTurns(
        Shape& shape, const std::vector<LinearConstraint>& monotone) const;
    [[nodiscard]] ConstrainedMinimum fairest(Shape& shape) const;

    std::vector<double> knotsMm_;
    std::vector<double> stepScaled_;       // piece lengths in units of kFairUnitMm
    std::vector<std::size_t> levelKnots_;  // knot index of each level
    Eigen::MatrixXd gram_;
};

}  // namespace coutil
