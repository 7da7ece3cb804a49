#pragma once

#include <tuple>
#include <vector>

#include "core/sheets/piece_cells.h"

namespace coutil {

// A piece to lay: a tracing, or its mirrored twin.
struct PieceToLay {
    std::size_t tracing = 0;
    bool isMirrored = false;
};

// Every tracing with a cutting line once, and its twin too where the options ask for twins.
[[nodiscard]] std::vector<PieceToLay> piecesToLay(const std::vector<Tracing>& tracings,
                                                  const SheetOptions& options);

// Where a piece lies: the lower left of its cells.
struct CellPlace {
    int turn = 0;  // index of the turn its cells were made for
    int x = 0;
    int y = 0;
};

// Pieces as cells: cells[piece][turn].
using TurnedCells = std::vector<std::vector<PieceCells>>;

// The first `made` of so many turns evenly around.
[[nodiscard]] TurnedCells turnedCells(const std::vector<PieceToLay>& pieces,
                                      const std::vector<Tracing>& tracings, const CellGrid& grid,
                                      int turns, int made);

enum class ShelfTurns { asDrawn, quarter, tall, wide };

struct Shelves {
    std::vector<CellPlace> places;
    int rows = 0;  // cells up to the highest piece
};

// Rows of pieces, side by side up to widthCells, the tallest first. cells need at least two turns a
// quarter apart: quarterTurn is the index of the second.
[[nodiscard]] Shelves packShelves(const TurnedCells& cells, ShelfTurns turns, int quarterTurn,
                                  int widthCells);

// What an arrangement costs, best first: sheets, then cells of height on a roll, then sheets that
// pieces are spread over.
struct LayoutCost {
    int sheets = 0;
    int rollRows = 0;
    int pieceSheets = 0;
    friend bool operator<(const LayoutCost& a, const LayoutCost& b) {
        return std::tie(a.sheets, a.rollRows, a.pieceSheets) <
               std::tie(b.sheets, b.rollRows, b.pieceSheets);
    }
};

[[nodiscard]] LayoutCost costOf(const TurnedCells& cells, const std::vector<CellPlace>& places,
                                const CellGrid& grid, bool isRoll);

// Shifts the whole against the sheets to where it costs least, first up, then across.
[[nodiscard]] LayoutCost shiftToBest(const TurnedCells& cells, std::vector<CellPlace>& places,
                                     const CellGrid& grid);

}  // namespace coutil
