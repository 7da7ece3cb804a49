#pragma once

#include <vector>

#include "core/sheets/piece_cells.h"

namespace coutil {

// How many cells of pieces lie in each zone of the sheets' grid (even zones shown by one sheet
// only, odd ones in an overlap), for a board of so many sheets across and up.
class TileCount {
  public:
    TileCount(const CellGrid& grid, int columns, int rows);

    void add(const PieceCells& piece, int x, int y, int sign);

    // Sheets needed: those that alone show a cell, and one more for every zone in an overlap that
    // none of them shows. Never less than the sheets really needed.
    [[nodiscard]] int sheets() const;

    // Sum over sheets of the part filled, each raised to the power 0.3: least when what there is
    // lies on few sheets. The concave term of a sheet nearly empty is steep, so it gets emptied.
    [[nodiscard]] double spread() const;

    // Sheets a piece alone needs there, overlaps counted as free.
    [[nodiscard]] int sheetsOf(const PieceCells& piece, int x, int y) const;

    [[nodiscard]] int boardColumns() const { return columns_ * grid_.perStepX + grid_.overlapX; }
    [[nodiscard]] int boardRows() const { return rows_ * grid_.perStepY + grid_.overlapY; }

  private:
    [[nodiscard]] int zonesX() const { return 2 * columns_ - 1; }
    [[nodiscard]] int zonesY() const { return 2 * rows_ - 1; }
    [[nodiscard]] std::size_t indexOf(int zoneX, int zoneY) const {
        return static_cast<std::size_t>(zoneY) * static_cast<std::size_t>(zonesX()) +
               static_cast<std::size_t>(zoneX);
    }
    [[nodiscard]] int filled(int zoneX, int zoneY) const { return filled_[indexOf(zoneX, zoneY)]; }
    [[nodiscard]] bool isShown(int zoneX, int zoneY) const;

    CellGrid grid_;
    int columns_;
    int rows_;
    std::vector<int> startX_;  // first cell of each zone, and the end of the last
    std::vector<int> startY_;
    std::vector<int> filled_;
};

}  // namespace coutil
