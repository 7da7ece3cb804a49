#pragma once

#include <vector>

#include <Eigen/Core>

namespace coutil {

// One linear constraint on the unknown x: sign * (c_row . x) >= rhs, or = rhs for an equality.
struct LinearConstraint {
    Eigen::Index row = 0;
    double sign = 1;
    double rhs = 0;
    bool isEquality = false;
};

struct ConstrainedMinimum {
    bool isFeasible = false;
    // c_row . x of every row, also of those that are no constraint.
    Eigen::VectorXd rowValues;
    // Per constraint its multiplier: how much the minimum resists it; 0 where it does not bind.
    std::vector<double> multipliers;
};

// Least x'Hx under the constraints, H positive definite, given only through
// gram = C H^-1 C' (all rows of C that are ever asked for). Dual active set method of Goldfarb and
// Idnani (1983) in the space of the constraints: equalities first, they must be independent of each
// other, then one violated constraint after the other. Constraints hold to about 1e-9 of
// their own scale. Not feasible when no x serves them all.
[[nodiscard]] ConstrainedMinimum constrainedMinimum(
    const Eigen::MatrixXd& gram, const std::vector<LinearConstraint>& constraints);

}  // namespace coutil
