#include <algorithm>
#include <cmath>

#include <Eigen/Cholesky>

#include "core/block/suppression_curve.h"

// The unknowns are the second derivatives g_k at the inner knots; they are linear in between, so
// f''' is constant on a piece and the integral of f'''^2 is the sum of (g_k+1 - g_k)^2 / h_k. The
// first and the last g are 0 (the curve runs out straight) and so is the first slope. Everything
// else is linear in g: "rise" f(knot) - f(lowest level), "slope" f'(knot), "middle" the middle
// Bezier coefficient of f' on a piece (if it and both end slopes have one sign, so has f'
// everywhere), and "bend" g itself.
namespace coutil {
namespace {

constexpr double kPieceMm = 22;        // about how long one piece is
constexpr double kRunOutBelowMm = 90;  // below the lowest level, until the curve stands upright
constexpr double kRunOutAboveMm = 50;  // above the highest level, until the curve is straight
constexpr std::size_t kRunOutPieces = 2;

std::size_t piecesFor(double lengthMm) {
    return static_cast<std::size_t>(std::clamp(std::lround(lengthMm / kPieceMm), 3L, 5L));
}

}  // namespace

FairCurveSolver::FairCurveSolver(const std::vector<double>& levelHeightsMm) {
    placeKnots(levelHeightsMm);
    buildGram();
}

void FairCurveSolver::placeKnots(const std::vector<double>& levelHeightsMm) {
    const auto addPieces = [this](double fromMm, double toMm, std::size_t count) {
        for (std::size_t i = 0; i < count; ++i) {
            knotsMm_.push_back(fromMm + (toMm - fromMm) * static_cast<double>(i) /
                                            static_cast<double>(count));
        }
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
        stepScaled_.push_back((knotsMm_[k + 1] - knotsMm_[k]) / kFairUnitMm);
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

}  // namespace coutil
