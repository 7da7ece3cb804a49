#include "core/sheets/layout_state.h"

#include <algorithm>
#include <limits>
#include <numeric>

namespace coutil {
namespace {

// The first two from our measurements on page packing; the last small enough never to buy a sheet.
constexpr double kSheetCost = 30;
constexpr double kSpreadCost = 20;
constexpr double kPieceSheetCost = 1;
constexpr long long kAnyOverlap = std::numeric_limits<long long>::max();

}  // namespace

LayoutState::LayoutState(const TurnedCells& cells, const CellGrid& grid, int columns, int rows)
    : cells_(cells), grid_(grid), tiles_(grid, columns, rows) {}

CellPlace LayoutState::onBoard(int piece, CellPlace place) const {
    const PieceCells& shape = cells(piece, place.turn);
    place.x = std::clamp(place.x, 0, std::max(0, tiles_.boardColumns() - shape.columns));
    place.y = std::clamp(place.y, 0, std::max(0, tiles_.boardRows() - shape.rows));
    return place;
}

void LayoutState::setAll(const std::vector<CellPlace>& places) {
    for (int i = 0; i < pieces(); ++i) {
        const CellPlace& at = place(i);
        tiles_.add(cells(i, at.turn), at.x, at.y, -1);
    }
    places_ = places;
    sheetsOf_.assign(places_.size(), 0);
    shared_.assign(places_.size() * places_.size(), 0);
    row_.assign(places_.size(), 0);
    overlap_ = 0;
    pieceSheets_ = 0;
    for (int i = 0; i < pieces(); ++i) {
        const CellPlace& at = place(i);
        const PieceCells& shape = cells(i, at.turn);
        tiles_.add(shape, at.x, at.y, 1);
        sheetsOf_[static_cast<std::size_t>(i)] = tiles_.sheetsOf(shape, at.x, at.y);
        pieceSheets_ += sheetsOf_[static_cast<std::size_t>(i)];
    }
    for (int i = 0; i < pieces(); ++i) static_cast<void>(keepShift(i, kAnyOverlap));
}

void LayoutState::shift(int piece, const CellPlace& to) {
    const auto index = static_cast<std::size_t>(piece);
    const CellPlace from = places_[index];
    tiles_.add(cells(piece, from.turn), from.x, from.y, -1);
    tiles_.add(cells(piece, to.turn), to.x, to.y, 1);
    const int sheets = tiles_.sheetsOf(cells(piece, to.turn), to.x, to.y);
    pieceSheets_ += sheets - sheetsOf_[index];
    sheetsOf_[index] = sheets;
    places_[index] = to;
}

bool LayoutState::keepShift(int piece, long long mostShared) {
    const CellPlace& at = place(piece);
    const PieceCells& shape = cells(piece, at.turn);
    long long sum = 0;
    if (mostShared < 0) return false;
    for (int other = 0; other < pieces(); ++other) {
        int& cellsShared = row_[static_cast<std::size_t>(other)];
        cellsShared = 0;
        if (other == piece) continue;
        const CellPlace& theirs = place(other);
        cellsShared = sharedCells(shape, at.x, at.y, cells(other, theirs.turn), theirs.x, theirs.y);
        sum += cellsShared;
        if (sum > mostShared) return false;
    }
    overlap_ += sum - sharedBy(piece);
    for (int other = 0; other < pieces(); ++other) {
        shared(piece, other) = row_[static_cast<std::size_t>(other)];
        shared(other, piece) = row_[static_cast<std::size_t>(other)];
    }
    return true;
}

long long LayoutState::sharedBy(int piece) const {
    const auto first = shared_.begin() + static_cast<std::ptrdiff_t>(piece) * pieces();
    return std::accumulate(first, first + pieces(), 0LL);
}

void LayoutState::move(int piece, const CellPlace& to) {
    shift(piece, to);
    static_cast<void>(keepShift(piece, kAnyOverlap));
}

double LayoutState::cost() const {
    return kSheetCost * tiles_.sheets() + kSpreadCost * tiles_.spread() +
           kPieceSheetCost * pieceSheets_;
}

}  // namespace coutil
