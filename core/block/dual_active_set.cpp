#include "core/block/dual_active_set.h"

#include <cmath>
#include <cstddef>
#include <limits>
#include <optional>

#include <Eigen/Cholesky>

#include "core/geometry/tolerances.h"

namespace coutil {
namespace {

class DualActiveSet {
  public:
    DualActiveSet(const Eigen::MatrixXd& gram, const std::vector<LinearConstraint>& constraints)
        : gram_(gram), constraints_(constraints), rowValues_(Eigen::VectorXd::Zero(gram.rows())) {}

    ConstrainedMinimum solve() {
        bool isFeasible = takeEqualities();
        setAsideSettled();
        // Every step raises the dual objective, so the loop ends by itself; the limit only guards
        // against rounding that goes in circles.
        for (std::size_t i = 0; isFeasible && i < 10 * constraints_.size() + 10; ++i) {
            const auto worst = mostViolated();
            if (!worst) return result(true);
            isFeasible = bring(*worst);
        }
        return result(false);
    }

  private:
    [[nodiscard]] double gramOf(std::size_t a, std::size_t b) const {
        const auto& ca = constraints_[a];
        const auto& cb = constraints_[b];
        return ca.sign * cb.sign * gram_(ca.row, cb.row);
    }
    [[nodiscard]] double slack(std::size_t c) const {
        return constraints_[c].sign * rowValues_[constraints_[c].row] - constraints_[c].rhs;
    }
    void refreshRowValues() {
        rowValues_.setZero();
        for (std::size_t i = 0; i < active_.size(); ++i) {
            const auto& c = constraints_[active_[i]];
            rowValues_ += gram_.col(c.row) * (c.sign * lambda_[i]);
        }
    }
    [[nodiscard]] Eigen::MatrixXd solvedInActive(const Eigen::MatrixXd& right) const {
        const auto n = static_cast<Eigen::Index>(active_.size());
        Eigen::MatrixXd small(n, n);
        for (Eigen::Index i = 0; i < n; ++i) {
            for (Eigen::Index j = 0; j < n; ++j) {
                small(i, j) = gramOf(active_[static_cast<std::size_t>(i)],
                                     active_[static_cast<std::size_t>(j)]);
            }
        }
        return small.llt().solve(right);
    }

    bool takeEqualities() {
        for (std::size_t c = 0; c < constraints_.size(); ++c) {
            if (!constraints_[c].isEquality) continue;
            active_.push_back(c);
            const double own = std::sqrt(gramOf(c, c));
            if (own > 0) scale_ = std::max(scale_, std::abs(constraints_[c].rhs) / own);
        }
        return settle();
    }

    // All active constraints hold exactly: their multipliers anew, free of the rounding of steps.
    bool settle() {
        Eigen::VectorXd right(static_cast<Eigen::Index>(active_.size()));
        for (std::size_t i = 0; i < active_.size(); ++i)
            right[static_cast<Eigen::Index>(i)] = constraints_[active_[i]].rhs;
        const Eigen::VectorXd solution = solvedInActive(right);
        lambda_.assign(solution.begin(), solution.end());
        refreshRowValues();
        return solution.allFinite();
    }

    // What the equalities alone decide is true or false by rounding only: never looked at again.
    void setAsideSettled() {
        Eigen::MatrixXd columns(static_cast<Eigen::Index>(active_.size()),
                                static_cast<Eigen::Index>(constraints_.size()));
        for (std::size_t c = 0; c < constraints_.size(); ++c)
            columns.col(static_cast<Eigen::Index>(c)) = gramWithActive(c);
        const Eigen::MatrixXd resist = solvedInActive(columns);
        for (std::size_t c = 0; c < constraints_.size(); ++c) {
            const auto col = static_cast<Eigen::Index>(c);
            const double own = gramOf(c, c);
            const double left = own - columns.col(col).dot(resist.col(col));
            isSettled_.push_back(constraints_[c].isEquality ||
                                 left <= tolerance::kDependentRelative * own);
        }
    }

    [[nodiscard]] Eigen::VectorXd gramWithActive(std::size_t c) const {
        Eigen::VectorXd column(static_cast<Eigen::Index>(active_.size()));
        for (std::size_t i = 0; i < active_.size(); ++i)
            column[static_cast<Eigen::Index>(i)] = gramOf(active_[i], c);
        return column;
    }

    [[nodiscard]] std::optional<std::size_t> mostViolated() const {
        std::optional<std::size_t> worst;
        double worstBy = tolerance::kConstraintRelative * scale_;
        for (std::size_t c = 0; c < constraints_.size(); ++c) {
            if (isSettled_[c]) continue;
            const double scale = std::sqrt(gramOf(c, c));
            const double by = -slack(c) / scale;
            if (by > worstBy) {
                worst = c;
                worstBy = by;
            }
        }
        return worst;
    }

    // Brings one violated constraint into the active set, dropping those that stand in its way.
    bool bring(std::size_t incoming) {
        double lambdaIncoming = 0;
        for (std::size_t guard = 0; guard <= constraints_.size(); ++guard) {
            const Eigen::VectorXd right = gramWithActive(incoming);
            const Eigen::VectorXd resist = solvedInActive(right);
            const double own = gramOf(incoming, incoming);
            const double curvature = own - right.dot(resist);
            const bool isDependent = curvature <= tolerance::kDependentRelative * own;
            const double fullStep = isDependent ? std::numeric_limits<double>::infinity()
                                                : -slackWith(incoming, lambdaIncoming) / curvature;
            const auto [dropAt, dropStep] = firstToDrop(resist);
            const double step = std::min(fullStep, dropStep);
            if (!std::isfinite(step)) return false;
            for (std::size_t i = 0; i < active_.size(); ++i)
                lambda_[i] -= step * resist[static_cast<Eigen::Index>(i)];
            lambdaIncoming += step;
            if (fullStep <= dropStep) {
                active_.push_back(incoming);
                return settle();
            }
            active_.erase(active_.begin() + static_cast<std::ptrdiff_t>(dropAt));
            lambda_.erase(lambda_.begin() + static_cast<std::ptrdiff_t>(dropAt));
            refreshRowValues();
        }
        return false;
    }

    // The slack of the incoming constraint while its own multiplier is already partly raised.
    [[nodiscard]] double slackWith(std::size_t incoming, double lambdaIncoming) const {
        return slack(incoming) + lambdaIncoming * gramOf(incoming, incoming);
    }

    [[nodiscard]] std::pair<std::size_t, double> firstToDrop(const Eigen::VectorXd& resist) const {
        std::pair<std::size_t, double> first{0, std::numeric_limits<double>::infinity()};
        for (std::size_t i = 0; i < active_.size(); ++i) {
            const double r = resist[static_cast<Eigen::Index>(i)];
            if (constraints_[active_[i]].isEquality || r <= 0) continue;
            const double step = lambda_[i] / r;
            if (step < first.second) first = {i, step};
        }
        return first;
    }

    [[nodiscard]] ConstrainedMinimum result(bool isFeasible) const {
        ConstrainedMinimum out{isFeasible, rowValues_, std::vector<double>(constraints_.size(), 0)};
        for (std::size_t i = 0; i < active_.size(); ++i) out.multipliers[active_[i]] = lambda_[i];
        return out;
    }

    const Eigen::MatrixXd& gram_;
    const std::vector<LinearConstraint>& constraints_;
    Eigen::VectorXd rowValues_;
    std::vector<std::size_t> active_;
    std::vector<double> lambda_;
    std::vector<bool> isSettled_;
    double scale_ = 0;  // of the rows once they are of unit length, by the equalities
};

}  // namespace

ConstrainedMinimum constrainedMinimum(const Eigen::MatrixXd& gram,
                                      const std::vector<LinearConstraint>& constraints) {
    return DualActiveSet(gram, constraints).solve();
}

}  // namespace coutil
