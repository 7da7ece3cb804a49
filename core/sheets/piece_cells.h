#pragma once

#include <cstdint>
#include <vector>

#include "core/sheets/outline_shape.h"
#include "core/sheets/sheet_plan.h"

namespace coutil {

// The drawing cut into small cells for packing: a whole number of them fits every step of the
// grid, so that sheet edges are cell edges.
struct CellGrid {
    double cellXMm = 1;
    double cellYMm = 1;
    int perStepX = 1;
    int perStepY = 1;
    int overlapX = 0;  // whole cells in the overlap, rounded down
    int overlapY = 0;
};

// Cells of about wantedMm.
[[nodiscard]] CellGrid cellGridFor(const SheetPlan& plan, double wantedMm);

// One tracing, turned one way, as cells: every cell that comes within half the space between
// tracings of it. Two pieces whose cells do not meet therefore keep that space. Errs to the full.
struct PieceCells {
    int columns = 0;
    int rows = 0;
    int words = 0;                    // 64 cells each, per row
    std::vector<std::uint64_t> bits;  // rows x words
    std::vector<std::uint32_t> sums;  // cells below and left, (rows + 1) x (columns + 1)
    Placement atOrigin;               // puts the tracing so that its cells start at cell (0, 0)

    [[nodiscard]] int cellsIn(int left, int bottom, int right, int top) const;  // clamped
};

[[nodiscard]] PieceCells cellsOf(const Tracing& tracing, double turnRad, bool isMirrored,
                                 const CellGrid& grid);

// Cells that both pieces fill when their lower left cells lie at the given places.
[[nodiscard]] int sharedCells(const PieceCells& a, int ax, int ay, const PieceCells& b, int bx,
                              int by);

// The tracing's placement when its lower left cell lies at (x, y).
[[nodiscard]] Placement placementAt(const PieceCells& piece, const CellGrid& grid, int x, int y);

}  // namespace coutil
