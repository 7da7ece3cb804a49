#include "core/sheets/search_layout.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/sheets/layout_moves.h"

namespace coutil {
namespace {

constexpr long long kMovesBetweenReports = 2048;

// -ln(u) in 1024 steps, on a grid of a millionth so that no two machines' log can differ.
double surprise(SeededRandom& random) {
    static const auto table = [] {
        std::array<double, 1024> made{};
        for (std::size_t i = 0; i < made.size(); ++i) {
            const double part = (static_cast<double>(i) + 0.5) / static_cast<double>(made.size());
            made[i] = std::round(-std::log(part) * 1e6) / 1e6;
        }
        return made;
    }();
    return table[static_cast<std::size_t>(random.below(static_cast<int>(table.size())))];
}

// Geometric course between two values by products only, which are the same everywhere.
class Falling {
  public:
    Falling(double first, double last, long long steps)
        : value_(first),
          factor_(
              std::round(std::pow(last / first, 1.0 / static_cast<double>(std::max(1LL, steps))) *
                         1e12) /
              1e12) {}
    void step() { value_ *= factor_; }
    [[nodiscard]] double value() const { return value_; }

  private:
    double value_;
    double factor_;
};

class Annealing {
  public:
    Annealing(LayoutState& state, const SearchCourse& course, SeededRandom& random,
              FoundLayout& best)
        : state_(state),
          random_(random),
          best_(best),
          moves_(state, random),
          count_(course.moves),
          temperature_(course.hot, course.cold, course.moves),
          overlapCost_(course.overlapFirst * cellsPerCm2(), course.overlapLast * cellsPerCm2(),
                       course.moves),
          cost_(state.cost()) {}

    bool run(const SearchProgress& progress) {
        for (long long i = 0; i < count_; ++i) {
            if (i % kMovesBetweenReports == 0 && progress &&
                !progress(static_cast<double>(i) / static_cast<double>(count_))) {
                return false;
            }
            const bool isExchange = state_.pieces() > 1 && random_.below(12) == 0;
            isExchange ? exchange() : moveOne(i);
            temperature_.step();
            overlapCost_.step();
        }
        return true;
    }

  private:
    [[nodiscard]] double cellsPerCm2() const {
        return state_.grid().cellXMm * state_.grid().cellYMm / 100;
    }

    void moveOne(long long i) {
        const int piece = random_.below(state_.pieces());
        const int widest = std::max(2, state_.grid().perStepX / 3);
        const int reach = std::max(1, static_cast<int>(widest * (count_ - i) / count_));
        const CellPlace from = state_.place(piece);
        const CellPlace to = moves_.propose(piece, reach);
        if (to.x == from.x && to.y == from.y && to.turn == from.turn) return;
        state_.shift(piece, to);
        const double cost = state_.cost();
        const double mayRise = temperature_.value() * surprise(random_) - (cost - cost_);
        const double mayShare =
            static_cast<double>(state_.sharedBy(piece)) + mayRise / overlapCost_.value();
        if (!state_.keepShift(piece, static_cast<long long>(std::floor(mayShare)))) {
            return state_.shift(piece, from);
        }
        cost_ = cost;
        if (state_.overlap() == 0) remember();
    }

    void exchange() {
        const int a = random_.below(state_.pieces());
        int b = random_.below(state_.pieces() - 1);
        if (b >= a) ++b;
        const CellPlace fromA = state_.place(a);
        const CellPlace fromB = state_.place(b);
        const auto middleA = moves_.middle2(a);
        const auto middleB = moves_.middle2(b);
        const long long overlap = state_.overlap();
        state_.move(a, moves_.centredAt(a, fromA.turn, middleB[0], middleB[1]));
        state_.move(b, moves_.centredAt(b, fromB.turn, middleA[0], middleA[1]));
        if (accept(overlap)) return;
        state_.move(a, fromA);
        state_.move(b, fromB);
    }

    bool accept(long long overlapBefore) {
        const double cost = state_.cost();
        const double rise =
            cost - cost_ +
            overlapCost_.value() * static_cast<double>(state_.overlap() - overlapBefore);
        if (rise > temperature_.value() * surprise(random_)) return false;
        cost_ = cost;
        if (state_.overlap() == 0) remember();
        return true;
    }

    void remember() {
        const LayoutCost cost{state_.tiles().sheets(), 0, state_.pieceSheets()};
        if (!best_.places.empty() && !(cost < best_.cost)) return;
        best_ = {cost, state_.places()};
    }

    LayoutState& state_;
    SeededRandom& random_;
    FoundLayout& best_;
    LayoutMoves moves_;
    long long count_;
    Falling temperature_;
    Falling overlapCost_;
    double cost_;
};

}  // namespace

bool searchLayout(LayoutState& state, const SearchCourse& course, SeededRandom& random,
                  FoundLayout& best, const SearchProgress& progress) {
    return Annealing(state, course, random, best).run(progress);
}

}  // namespace coutil
