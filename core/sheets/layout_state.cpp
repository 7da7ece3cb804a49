#include "core/sheets/layout_state.h"

#include <algorithm>

namespace coutil {
namespace {

// The first two from our measurements on page packing; the last small enough never to buy a sheet.
constexpr double kSheetCost = 30;
constexpr double kSpreadCost = 20;
constexpr double kPieceSheetCost = 1;

}  // namespace

LayoutState::LayoutState(const TurnedCells& cells, const CellGrid& grid, int columns, int rows)
    : cells_(cells), grid_(grid), tiles_(grid, columns, rows) {}

CellPlace LayoutState::onBoard(int piece, CellPlace place) const {
    const PieceCells& shape = cells(piece, place.turn);
    place.x = std::clamp(place.x, 0, std::max(0, tiles_.boardColumns() - shape.columns));
    place.y = std::clamp(place.y, 0, std::max(0, tiles_.boardRows() - shape.rows));
    return place;
}

int LayoutState::overlapAt(int piece, const CellPlace& place) const {
    const PieceCells& shape = cells(piece, place.turn);
    int shared = 0;
    for (int other = 0; other < pieces(); ++other) {
        if (other == piece) continue;
        const CellPlace& at = places_[static_cast<std::size_t>(other)];
        shared += sharedCells(shape, place.x, place.y, cells(other, at.turn), at.x, at.y);
    }
    return shared;
}

void LayoutState::setAll(const std::vector<CellPlace>& places) {
    for (int i = 0; i < pieces(); ++i) {
        const CellPlace& at = place(i);
        tiles_.add(cells(i, at.turn), at.x, at.y, -1);
    }
    places_ = places;
    sheetsOf_.assign(places_.size(), 0);
    overlap_ = 0;
    pieceSheets_ = 0;
    for (int i = 0; i < pieces(); ++i) {
        const CellPlace& at = place(i);
        const PieceCells& shape = cells(i, at.turn);
        tiles_.add(shape, at.x, at.y, 1);
        sheetsOf_[static_cast<std::size_t>(i)] = tiles_.sheetsOf(shape, at.x, at.y);
        pieceSheets_ += sheetsOf_[static_cast<std::size_t>(i)];
        overlap_ += overlapAt(i, at);
    }
    overlap_ /= 2;
}

void LayoutState::move(int piece, const CellPlace& to) {
    const auto index = static_cast<std::size_t>(piece);
    const CellPlace from = places_[index];
    overlap_ += overlapAt(piece, to) - overlapAt(piece, from);
    tiles_.add(cells(piece, from.turn), from.x, from.y, -1);
    tiles_.add(cells(piece, to.turn), to.x, to.y, 1);
    const int sheets = tiles_.sheetsOf(cells(piece, to.turn), to.x, to.y);
    pieceSheets_ += sheets - sheetsOf_[index];
    sheetsOf_[index] = sheets;
    places_[index] = to;
}

double LayoutState::cost() const {
    return kSheetCost * tiles_.sheets() + kSpreadCost * tiles_.spread() +
           kPieceSheetCost * pieceSheets_;
}

}  // namespace coutil
