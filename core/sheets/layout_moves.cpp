#include "core/sheets/layout_moves.h"

#include <algorithm>

namespace coutil {
namespace {

// How far a piece slides into another's box, in cells, to nestle against its outline.
constexpr int kDeepestNestle = 80;

}  // namespace

CellPlace LayoutMoves::propose(int piece, int reach) {
    // Shares in per cent, found by trial on a dress and on corsets.
    const int kind = random_.below(100);
    if (kind < 35) return shifted(piece, reach);
    if (kind < 55) return snapped(piece, state_.place(piece));
    if (kind < 67) return turned(piece);
    if (kind < 87) return nestled(piece);
    return jumped(piece);
}

CellPlace LayoutMoves::centredAt(int piece, int turn, int x2, int y2) const {
    const PieceCells& shape = state_.cells(piece, turn);
    return state_.onBoard(piece, {turn, (x2 - shape.columns) / 2, (y2 - shape.rows) / 2});
}

std::array<int, 2> LayoutMoves::middle2(int piece) const {
    const CellPlace& at = state_.place(piece);
    const PieceCells& shape = state_.cells(piece, at.turn);
    return {2 * at.x + shape.columns, 2 * at.y + shape.rows};
}

CellPlace LayoutMoves::shifted(int piece, int reach) {
    CellPlace to = state_.place(piece);
    const int axes = random_.below(3);
    if (axes != 1) to.x += random_.within(reach);
    if (axes != 0) to.y += random_.within(reach);
    return state_.onBoard(piece, to);
}

CellPlace LayoutMoves::turned(int piece) {
    const auto [x2, y2] = middle2(piece);
    const CellPlace to = centredAt(piece, random_.below(state_.turns()), x2, y2);
    return random_.below(2) == 0 ? to : snapped(piece, to);
}

CellPlace LayoutMoves::jumped(int piece) {
    CellPlace to;
    to.turn = random_.below(state_.turns());
    to.x = random_.below(state_.tiles().boardColumns());
    to.y = random_.below(state_.tiles().boardRows());
    to = state_.onBoard(piece, to);
    return random_.below(4) == 0 ? to : snapped(piece, to);
}

// A piece's near edge to where a sheet starts showing, or its far edge to where one stops.
int LayoutMoves::snappedAxis(int at, int size, int perStep, int overlap) {
    if (random_.below(2) == 0) return (at + perStep / 2) / perStep * perStep;
    const int end = at + size - overlap;
    return (end + perStep / 2) / perStep * perStep + overlap - size;
}

CellPlace LayoutMoves::snapped(int piece, CellPlace to) {
    const PieceCells& shape = state_.cells(piece, to.turn);
    const CellGrid& grid = state_.grid();
    const int axes = random_.below(3);
    if (axes != 1) to.x = snappedAxis(to.x, shape.columns, grid.perStepX, grid.overlapX);
    if (axes != 0) to.y = snappedAxis(to.y, shape.rows, grid.perStepY, grid.overlapY);
    return state_.onBoard(piece, to);
}

// Along the side of another piece: flush with one of its ends, where it is now, or anywhere.
int LayoutMoves::lineUp(int theirFirst, int theirSize, int ourSize, int ourOwn) {
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
}

// Slides in from one side of another piece until they would touch.
CellPlace LayoutMoves::nestled(int piece) {
    if (state_.pieces() < 2) return jumped(piece);
    int other = random_.below(state_.pieces() - 1);
    if (other >= piece) ++other;
    const CellPlace& own = state_.place(piece);
    const CellPlace& at = state_.place(other);
    const PieceCells& theirs = state_.cells(other, at.turn);
    CellPlace to = own;
    if (random_.below(3) == 0) to.turn = random_.below(state_.turns());
    const PieceCells& ours = state_.cells(piece, to.turn);
    const bool isLevel = random_.below(2) == 0;
    const int into = random_.below(2) == 0 ? 1 : -1;
    if (isLevel) {
        to.y = lineUp(at.y, theirs.rows, ours.rows, own.y);
        to.x = into > 0 ? at.x - ours.columns : at.x + theirs.columns;
    } else {
        to.x = lineUp(at.x, theirs.columns, ours.columns, own.x);
        to.y = into > 0 ? at.y - ours.rows : at.y + theirs.rows;
    }
    const int dx = isLevel ? into : 0;
    const int dy = isLevel ? 0 : into;
    const int deepest = std::min(isLevel ? ours.columns : ours.rows, kDeepestNestle);
    for (int depth = 0; depth < deepest; ++depth) {
        if (sharedCells(ours, to.x + dx, to.y + dy, theirs, at.x, at.y) > 0) break;
        to.x += dx;
        to.y += dy;
    }
    return state_.onBoard(piece, to);
}

}  // namespace coutil
