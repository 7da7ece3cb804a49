#pragma once

#include <vector>

#include "core/sheets/pack_shelves.h"
#include "core/sheets/tile_count.h"

namespace coutil {

// Pieces on a board of sheets, which may overlap while a search goes on, with what that costs.
class LayoutState {
  public:
    LayoutState(const TurnedCells& cells, const CellGrid& grid, int columns, int rows);

    [[nodiscard]] int pieces() const { return static_cast<int>(places_.size()); }
    [[nodiscard]] const std::vector<CellPlace>& places() const { return places_; }
    [[nodiscard]] const CellPlace& place(int piece) const {
        return places_[static_cast<std::size_t>(piece)];
    }
    [[nodiscard]] const PieceCells& cells(int piece, int turn) const {
        return cells_[static_cast<std::size_t>(piece)][static_cast<std::size_t>(turn)];
    }
    [[nodiscard]] int turns() const { return static_cast<int>(cells_.front().size()); }
    [[nodiscard]] const TileCount& tiles() const { return tiles_; }
    [[nodiscard]] const CellGrid& grid() const { return grid_; }

    // The nearest place on the board.
    [[nodiscard]] CellPlace onBoard(int piece, CellPlace place) const;

    void setAll(const std::vector<CellPlace>& places);
    void move(int piece, const CellPlace& to);

    // A move in two steps, so that most are refused before the dear one. First the piece goes
    // there, overlaps not yet known; then either keepShift(), which returns false as soon as the
    // piece shares more than `mostShared` cells with others (the shift is not kept then), or a
    // shift back.
    void shift(int piece, const CellPlace& to);
    [[nodiscard]] bool keepShift(int piece, long long mostShared);
    [[nodiscard]] long long sharedBy(int piece) const;  // as last kept

    [[nodiscard]] long long overlap() const { return overlap_; }    // cells shared by pairs
    [[nodiscard]] int pieceSheets() const { return pieceSheets_; }  // over all pieces
    // 30 a sheet, 20 a unit of spread, 1 a sheet of a piece; overlapping not counted.
    [[nodiscard]] double cost() const;

  private:
    [[nodiscard]] int& shared(int a, int b) {
        return shared_[static_cast<std::size_t>(a) * places_.size() + static_cast<std::size_t>(b)];
    }
    const TurnedCells& cells_;
    CellGrid grid_;
    TileCount tiles_;
    std::vector<CellPlace> places_;
    std::vector<int> sheetsOf_;
    std::vector<int> shared_;  // cells of every pair
    std::vector<int> row_;     // the same for one piece, being worked out
    long long overlap_ = 0;
    int pieceSheets_ = 0;
};

}  // namespace coutil
