#include "core/making_up/pattern_prices.h"

#include <algorithm>
#include <cmath>

#include <Eigen/Core>

#include "core/geometry/tolerances.h"
#include "core/making_up/best_pattern.h"

namespace coutil {
namespace {

// The dearest bar is worth this much in whole numbers; knapsack bounds then stay in 64 bits.
constexpr double kWhole = 4294967296.0;

struct Column {
    Eigen::VectorXd counts;
    double cost = 0;
};

// The linear programme "cheapest bars that hold at least what is wanted", by the primal simplex
// method on a dense inverse. Rows are the sizes still wanted. Costs in shares of the dearest bar.
class PatternMaster {
  public:
    PatternMaster(const CuttingTask& task, const std::vector<int>& wanted)
        : task_(task), wanted_(wanted) {
        for (std::size_t i = 0; i < wanted.size(); ++i) {
            if (wanted[i] > 0) rows_.push_back(i);
        }
        const auto n = static_cast<Eigen::Index>(rows_.size());
        inverse_ = Eigen::MatrixXd::Zero(n, n);
        amounts_ = Eigen::VectorXd::Zero(n);
        costs_ = Eigen::VectorXd::Zero(n);
        for (Eigen::Index row = 0; row < n; ++row) startRow(row);
    }

    // Prices per size, in whole numbers; none below 0.
    [[nodiscard]] std::vector<std::int64_t> wholePrices() const {
        const Eigen::VectorXd prices = inverse_.transpose() * costs_;
        std::vector<std::int64_t> values(task_.sizes.size(), 0);
        for (std::size_t r = 0; r < rows_.size(); ++r) {
            const double price = prices[static_cast<Eigen::Index>(r)];
            values[rows_[r]] =
                static_cast<std::int64_t>(std::floor(std::clamp(price, 0.0, 1.0) * kWhole));
        }
        return values;
    }

    // A size that is cut too often may be left out: its row's surplus comes in.
    [[nodiscard]] std::optional<Column> surplusThatPays() const {
        const Eigen::VectorXd prices = inverse_.transpose() * costs_;
        Eigen::Index row = 0;
        if (prices.minCoeff(&row) >= -tolerance::kPricedShare) return std::nullopt;
        Column column{Eigen::VectorXd::Zero(prices.size()), 0};
        column.counts[row] = -1;
        return column;
    }

    [[nodiscard]] Column columnOf(const std::vector<int>& counts, std::size_t stock) const {
        Column column{Eigen::VectorXd::Zero(amounts_.size()), costOf(stock)};
        for (std::size_t r = 0; r < rows_.size(); ++r) {
            column.counts[static_cast<Eigen::Index>(r)] = counts[rows_[r]];
        }
        return column;
    }

    // Takes a column into the basis; false where nothing limits it (rounding has won).
    bool enter(const Column& column) {
        const Eigen::VectorXd step = inverse_ * column.counts;
        Eigen::Index leaving = -1;
        double least = 0;
        for (Eigen::Index row = 0; row < step.size(); ++row) {
            if (step[row] <= tolerance::kPricedShare) continue;
            const double ratio = amounts_[row] / step[row];
            if (leaving >= 0 && ratio >= least) continue;
            leaving = row;
            least = ratio;
        }
        if (leaving < 0) return false;
        pivot(step, leaving, std::max(least, 0.0));
        costs_[leaving] = column.cost;
        return true;
    }

    [[nodiscard]] std::int64_t work() const { return 1 + inverse_.size() / 8; }
    [[nodiscard]] std::size_t rowCount() const { return rows_.size(); }

  private:
    const CuttingTask& task_;
    const std::vector<int>& wanted_;
    std::vector<std::size_t> rows_;  // sizes in the task
    Eigen::MatrixXd inverse_;
    Eigen::VectorXd amounts_;
    Eigen::VectorXd costs_;

    [[nodiscard]] double costOf(std::size_t stock) const {
        return static_cast<double>(task_.costs[stock]) / static_cast<double>(task_.costs.back());
    }

    // To begin with every size has bars of its own, of the stock where it comes cheapest.
    void startRow(Eigen::Index row) {
        const std::size_t size = rows_[static_cast<std::size_t>(row)];
        double cheapest = 0;
        for (std::size_t stock = 0; stock < task_.rooms.size(); ++stock) {
            const auto fits = static_cast<double>(
                std::min<std::int64_t>(wanted_[size], task_.rooms[stock] / task_.sizes[size]));
            if (fits <= 0 || (cheapest > 0 && costOf(stock) / fits >= cheapest)) continue;
            cheapest = costOf(stock) / fits;
            inverse_(row, row) = 1 / fits;
            amounts_[row] = wanted_[size] / fits;
            costs_[row] = costOf(stock);
        }
    }

    void pivot(const Eigen::VectorXd& step, Eigen::Index leaving, double amount) {
        amounts_ -= amount * step;
        amounts_[leaving] = amount;
        const Eigen::RowVectorXd pivotRow = inverse_.row(leaving) / step[leaving];
        inverse_.noalias() -= step * pivotRow;
        inverse_.row(leaving) = pivotRow;
    }
};

// The best pattern of every stock by the prices of the moment.
struct Priced {
    PatternPrices prices;
    std::vector<BestPattern> patterns;
};

std::optional<Priced> priced(const CuttingTask& task, const std::vector<int>& wanted,
                             std::vector<std::int64_t> values, StepsLeft& left) {
    Priced priced{{std::move(values), {}}, {}};
    for (const std::int64_t room : task.rooms) {
        auto best = bestPattern(task, wanted, priced.prices.values, room, left);
        if (!best) return std::nullopt;
        priced.prices.mostInBar.push_back(best->value);
        priced.patterns.push_back(std::move(*best));
    }
    return priced;
}

// The stock whose best pattern holds most for its cost; nothing when no pattern pays.
std::optional<std::size_t> stockThatPays(const CuttingTask& task, const PatternPrices& prices) {
    std::optional<std::size_t> found;
    double most = 1 + tolerance::kPricedShare;
    for (std::size_t stock = 0; stock < task.rooms.size(); ++stock) {
        const double cost = kWhole * static_cast<double>(task.costs[stock]) /
                            static_cast<double>(task.costs.back());
        const double share = static_cast<double>(prices.mostInBar[stock]) / cost;
        if (share <= most) continue;
        most = share;
        found = stock;
    }
    return found;
}

}  // namespace

std::optional<PatternPrices> pricesFor(const CuttingTask& task, const std::vector<int>& wanted,
                                       StepsLeft& left) {
    PatternMaster master(task, wanted);
    if (master.rowCount() == 0) return pricesBySize(task);
    // Far more rounds than a programme of this size takes; stops one that goes round in circles.
    const std::size_t rounds = 100 + 40 * master.rowCount();
    for (std::size_t round = 0;; ++round) {
        left.spend(master.work());
        if (const auto surplus = master.surplusThatPays()) {
            if (round < rounds && master.enter(*surplus)) continue;
        }
        auto found = priced(task, wanted, master.wholePrices(), left);
        if (!found) return std::nullopt;
        const auto stock = stockThatPays(task, found->prices);
        if (!stock || round >= rounds ||
            !master.enter(master.columnOf(found->patterns[*stock].counts, *stock)))
            return std::move(found->prices);
    }
}

}  // namespace coutil
