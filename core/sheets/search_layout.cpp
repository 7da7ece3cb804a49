#include "core/sheets/search_layout.h"

#include <algorithm>
#include <array>
#include <cmath>

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

class Mover {
  public:
    Mover(const LayoutState& state, SeededRandom& random) : state_(state), random_(random) {}

    // Where to try the piece next. `reach` is how far a small shift may go, in cells.
    CellPlace propose(int piece, int reach) {
        const int kind = random_.below(100);
        if (kind < 35) return shifted(piece, reach);
        if (kind < 55) return snapped(piece, state_.place(piece));
        if (kind < 67) return turned(piece);
        if (kind < 87) return nestled(piece);
        return jumped(piece);
    }

    CellPlace centredAt(int piece, int turn, int x2, int y2) const {
        const PieceCells& shape = state_.cells(piece, turn);
        return state_.onBoard(piece, {turn, (x2 - shape.columns) / 2, (y2 - shape.rows) / 2});
    }

    // Twice the middle of a piece.
    [[nodiscard]] std::array<int, 2> middle2(int piece) const {
        const CellPlace& at = state_.place(piece);
        const PieceCells& shape = state_.cells(piece, at.turn);
        return {2 * at.x + shape.columns, 2 * at.y + shape.rows};
    }

  private:
    CellPlace shifted(int piece, int reach) {
        CellPlace to = state_.place(piece);
        const int axes = random_.below(3);
        if (axes != 1) to.x += random_.within(reach);
        if (axes != 0) to.y += random_.within(reach);
        return state_.onBoard(piece, to);
    }

    CellPlace turned(int piece) {
        const auto [x2, y2] = middle2(piece);
        CellPlace to = centredAt(piece, random_.below(state_.turns()), x2, y2);
        return random_.below(2) == 0 ? to : snapped(piece, to);
    }

    CellPlace jumped(int piece) {
        CellPlace to{random_.below(state_.turns()), random_.below(state_.tiles().boardColumns()),
                     random_.below(state_.tiles().boardRows())};
        to = state_.onBoard(piece, to);
        return random_.below(4) == 0 ? to : snapped(piece, to);
    }

    // A piece's near edge to where a sheet starts showing, or its far edge to where one stops.
    int snappedAxis(int at, int size, int perStep, int overlap) {
        if (random_.below(2) == 0) return (at + perStep / 2) / perStep * perStep;
        const int end = at + size - overlap;
        return (end + perStep / 2) / perStep * perStep + overlap - size;
    }

    CellPlace snapped(int piece, CellPlace to) {
        const PieceCells& shape = state_.cells(piece, to.turn);
        const CellGrid& grid = state_.grid();
        const int axes = random_.below(3);
        if (axes != 1) to.x = snappedAxis(to.x, shape.columns, grid.perStepX, grid.overlapX);
        if (axes != 0) to.y = snappedAxis(to.y, shape.rows, grid.perStepY, grid.overlapY);
        return state_.onBoard(piece, to);
    }

    // Slides in from one side of another piece until they would touch.
    CellPlace nestled(int piece) {
        if (state_.pieces() < 2) return jumped(piece);
        int other = random_.below(state_.pieces() - 1);
        if (other >= piece) ++other;
        const CellPlace& at = state_.place(other);
        const PieceCells& theirs = state_.cells(other, at.turn);
        const bool keepsTurn = random_.below(3) != 0;
        const int turn = keepsTurn ? state_.place(piece).turn : random_.below(state_.turns());
        const PieceCells& ours = state_.cells(piece, turn);
        const int side = random_.below(4);
        CellPlace to{turn, 0, 0};
        int dx = 0;
        int dy = 0;
        const auto along = [&](int theirFirst, int theirSize, int ourSize, int ourOwn) {
            switch (random_.below(4)) {
                case 0:
                    return theirFirst;
                case 1:
                    return theirFirst + theirSize - ourSize;
                case 2:
                    return ourOwn;
                default:
                    return theirFirst - ourSize / 2 + random_.below(theirSize);
            }
        };
        if (side < 2) {
            to.y = along(at.y, theirs.rows, ours.rows, state_.place(piece).y);
            to.x = side == 0 ? at.x - ours.columns : at.x + theirs.columns;
            dx = side == 0 ? 1 : -1;
        } else {
            to.x = along(at.x, theirs.columns, ours.columns, state_.place(piece).x);
            to.y = side == 2 ? at.y - ours.rows : at.y + theirs.rows;
            dy = side == 2 ? 1 : -1;
        }
        const int deepest = std::min(side < 2 ? ours.columns : ours.rows, 40);
        for (int depth = 0; depth < deepest; ++depth) {
            if (sharedCells(ours, to.x + dx, to.y + dy, theirs, at.x, at.y) > 0) break;
            to.x += dx;
            to.y += dy;
        }
        return state_.onBoard(piece, to);
    }

    const LayoutState& state_;
    SeededRandom& random_;
};

class Annealing {
  public:
    Annealing(LayoutState& state, const SearchCourse& course, SeededRandom& random,
              FoundLayout& best)
        : state_(state),
          random_(random),
          best_(best),
          mover_(state, random),
          moves_(course.moves),
          temperature_(course.hot, course.cold, course.moves),
          overlapCost_(course.overlapFirst * cellsPerCm2(), course.overlapLast * cellsPerCm2(),
                       course.moves),
          cost_(state.cost()) {}

    bool run(const SearchProgress& progress) {
        for (long long i = 0; i < moves_; ++i) {
            if (i % kMovesBetweenReports == 0 && progress &&
                !progress(static_cast<double>(i) / static_cast<double>(moves_))) {
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
        const int reach = std::max(1, static_cast<int>(widest * (moves_ - i) / moves_));
        const CellPlace from = state_.place(piece);
        const CellPlace to = mover_.propose(piece, reach);
        if (to.x == from.x && to.y == from.y && to.turn == from.turn) return;
        const long long overlap = state_.overlap();
        state_.move(piece, to);
        if (!accept(overlap)) state_.move(piece, from);
    }

    void exchange() {
        const int a = random_.below(state_.pieces());
        int b = random_.below(state_.pieces() - 1);
        if (b >= a) ++b;
        const CellPlace fromA = state_.place(a);
        const CellPlace fromB = state_.place(b);
        const auto middleA = mover_.middle2(a);
        const auto middleB = mover_.middle2(b);
        const long long overlap = state_.overlap();
        state_.move(a, mover_.centredAt(a, fromA.turn, middleB[0], middleB[1]));
        state_.move(b, mover_.centredAt(b, fromB.turn, middleA[0], middleA[1]));
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
    Mover mover_;
    long long moves_;
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
