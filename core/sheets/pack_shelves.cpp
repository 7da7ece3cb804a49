#include "core/sheets/pack_shelves.h"

#include <algorithm>
#include <numbers>
#include <numeric>

#include "core/sheets/tile_count.h"

namespace coutil {
namespace {

int turnFor(const std::vector<PieceCells>& ways, ShelfTurns turns, int quarterTurn) {
    const auto quarter = static_cast<std::size_t>(quarterTurn);
    const bool isTall = ways[0].rows >= ways[quarter].rows;
    switch (turns) {
        case ShelfTurns::asDrawn:
            return 0;
        case ShelfTurns::quarter:
            return quarterTurn;
        case ShelfTurns::tall:
            return isTall ? 0 : quarterTurn;
        case ShelfTurns::wide:
            return isTall ? quarterTurn : 0;
    }
    return 0;
}

std::vector<CellPlace> shifted(std::vector<CellPlace> places, int dx, int dy) {
    for (auto& place : places) {
        place.x += dx;
        place.y += dy;
    }
    return places;
}

}  // namespace

std::vector<PieceToLay> piecesToLay(const std::vector<Tracing>& tracings,
                                    const SheetOptions& options) {
    std::vector<PieceToLay> pieces;
    for (std::size_t i = 0; i < tracings.size(); ++i) {
        if (tracings[i].cutting.isEmpty()) continue;
        pieces.push_back({i, false});
        const bool hasTwin = tracings[i].isMirroredPair && tracings[i].cutCount > 1;
        if (options.mirroredToo && hasTwin) pieces.push_back({i, true});
    }
    return pieces;
}

TurnedCells turnedCells(const std::vector<PieceToLay>& pieces, const std::vector<Tracing>& tracings,
                        const CellGrid& grid, int turns, int made) {
    TurnedCells cells;
    cells.reserve(pieces.size());
    for (const auto& piece : pieces) {
        auto& ways = cells.emplace_back();
        ways.reserve(static_cast<std::size_t>(made));
        for (int turn = 0; turn < made; ++turn) {
            const double angle = 2 * std::numbers::pi * turn / turns;
            ways.push_back(cellsOf(tracings[piece.tracing], angle, piece.isMirrored, grid));
        }
    }
    return cells;
}

Shelves packShelves(const TurnedCells& cells, ShelfTurns turns, int quarterTurn, int widthCells) {
    Shelves shelves;
    std::vector<std::size_t> order(cells.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    for (const auto& ways : cells) {
        shelves.places.push_back({turnFor(ways, turns, quarterTurn), 0, 0});
    }
    const auto chosen = [&](std::size_t piece) -> const PieceCells& {
        return cells[piece][static_cast<std::size_t>(shelves.places[piece].turn)];
    };
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return chosen(a).rows > chosen(b).rows; });
    int x = 0;
    int bottom = 0;
    for (const std::size_t piece : order) {
        if (x > 0 && x + chosen(piece).columns > widthCells) {
            x = 0;
            bottom = shelves.rows;
        }
        shelves.places[piece].x = x;
        shelves.places[piece].y = bottom;
        x += chosen(piece).columns;
        shelves.rows = std::max(shelves.rows, bottom + chosen(piece).rows);
    }
    return shelves;
}

LayoutCost costOf(const TurnedCells& cells, const std::vector<CellPlace>& places,
                  const CellGrid& grid, bool isRoll) {
    int right = 0;
    int top = 0;
    for (std::size_t i = 0; i < places.size(); ++i) {
        const auto& piece = cells[i][static_cast<std::size_t>(places[i].turn)];
        right = std::max(right, places[i].x + piece.columns);
        top = std::max(top, places[i].y + piece.rows);
    }
    TileCount tiles(grid, right / grid.perStepX + 1, top / grid.perStepY + 1);
    LayoutCost cost;
    for (std::size_t i = 0; i < places.size(); ++i) {
        const auto& piece = cells[i][static_cast<std::size_t>(places[i].turn)];
        tiles.add(piece, places[i].x, places[i].y, 1);
        cost.pieceSheets += tiles.sheetsOf(piece, places[i].x, places[i].y);
    }
    cost.sheets = tiles.sheets();
    cost.rollRows = isRoll ? top : 0;
    return cost;
}

LayoutCost shiftToBest(const TurnedCells& cells, std::vector<CellPlace>& places,
                       const CellGrid& grid) {
    LayoutCost best = costOf(cells, places, grid, false);
    const auto tryAll = [&](int count, bool isUp) {
        const std::vector<CellPlace> start = places;
        for (int by = 1; by < count; ++by) {
            auto moved = shifted(start, isUp ? 0 : by, isUp ? by : 0);
            const LayoutCost cost = costOf(cells, moved, grid, false);
            if (cost < best) {
                best = cost;
                places = std::move(moved);
            }
        }
    };
    tryAll(grid.perStepY, true);
    tryAll(grid.perStepX, false);
    return best;
}

}  // namespace coutil
