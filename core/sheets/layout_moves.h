#pragma once

#include <array>

#include "core/sheets/layout_state.h"
#include "core/sheets/seeded_random.h"

namespace coutil {

// Proposes where a piece might go next: always a place on the board.
class LayoutMoves {
  public:
    LayoutMoves(const LayoutState& state, SeededRandom& random) : state_(state), random_(random) {}

    // A small shift (up to `reach` cells), a turn, an edge snapped to where a sheet begins or ends,
    // a place close beside another piece, or anywhere.
    [[nodiscard]] CellPlace propose(int piece, int reach);

    // With its middle nearest to half of (x2, y2).
    [[nodiscard]] CellPlace centredAt(int piece, int turn, int x2, int y2) const;

    // Twice the middle of a piece.
    [[nodiscard]] std::array<int, 2> middle2(int piece) const;

  private:
    [[nodiscard]] CellPlace shifted(int piece, int reach);
    [[nodiscard]] CellPlace turned(int piece);
    [[nodiscard]] CellPlace jumped(int piece);
    [[nodiscard]] CellPlace snapped(int piece, CellPlace to);
    [[nodiscard]] CellPlace nestled(int piece);
    [[nodiscard]] int snappedAxis(int at, int size, int perStep, int overlap);
    [[nodiscard]] int lineUp(int theirFirst, int theirSize, int ourSize, int ourOwn);

    const LayoutState& state_;
    SeededRandom& random_;
};

}  // namespace coutil
