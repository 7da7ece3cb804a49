#include <algorithm>
#include <cmath>
#include <optional>

#include "core/geometry/tolerances.h"
#include "core/sheets/finish_plan.h"
#include "core/sheets/pack_shelves.h"
#include "core/sheets/plan_one_page.h"
#include "core/sheets/sheet_grid.h"

namespace coutil {
namespace {

// Coarse cells: fast, and only the final count is by the real outlines. Coarser still where the
// pieces are so large that they would be more than this many.
constexpr double kQuickCellMm = 4;
constexpr double kMostCells = 300'000;
constexpr int kWidestShelfSheets = 8;

struct Candidate {
    LayoutCost cost;
    std::vector<CellPlace> places;
    CellGrid grid;
    bool isLandscape = false;
    std::size_t cells = 0;  // which orientation's cells
};

void tryShelves(const TurnedCells& cells, Candidate candidate, bool isRoll,
                std::optional<Candidate>& best) {
    const CellGrid& grid = candidate.grid;
    const int widest = isRoll ? 1 : kWidestShelfSheets;
    for (const auto turns :
         {ShelfTurns::asDrawn, ShelfTurns::quarter, ShelfTurns::tall, ShelfTurns::wide}) {
        for (int across = 1; across <= widest; ++across) {
            const int width = across * grid.perStepX + grid.overlapX;
            candidate.places = packShelves(cells, turns, 1, width).places;
            candidate.cost = isRoll ? costOf(cells, candidate.places, grid, true)
                                    : shiftToBest(cells, candidate.places, grid);
            if (!best || candidate.cost < best->cost) best = candidate;
        }
    }
}

double quickCellMm(const std::vector<PieceToLay>& pieces, const std::vector<Tracing>& tracings) {
    double boxesMm2 = 0;
    for (const auto& piece : pieces) {
        const Box box = boundsOf(tracings[piece.tracing].cutting);
        const double side = std::max(box.widthMm(), box.heightMm());
        boxesMm2 += side * side;
    }
    return std::max(kQuickCellMm, std::sqrt(boxesMm2 / kMostCells));
}

// Sheets that the area alone would fill.
double leastSheets(const std::vector<PieceToLay>& pieces, const std::vector<Tracing>& tracings,
                   const SheetPlan& empty) {
    double areaMm2 = 0;
    for (const auto& piece : pieces) {
        areaMm2 += std::abs(signedAreaMm2(tracings[piece.tracing].cutting));
    }
    const double frameUm2 =
        static_cast<double>(empty.frameXUm) * static_cast<double>(empty.frameYUm);
    return std::ceil(areaMm2 * 1e6 / frameUm2);
}

}  // namespace

Outcome<SheetPlan> planSheets(const std::vector<Tracing>& tracings, const SheetOptions& options) {
    auto problems = checkSheetOptions(options);
    if (!problems.empty()) return Outcome<SheetPlan>::failed(std::move(problems));
    if (options.paper.isOnePage) return planOnePage(tracings, options);
    const auto pieces = piecesToLay(tracings, options);
    const double least = leastSheets(pieces, tracings, emptyPlan(options, false));
    if (least > kMostSheets) return tooManySheets(options, least);
    const double cellMm = quickCellMm(pieces, tracings);
    std::optional<Candidate> best;
    std::vector<TurnedCells> cells;
    for (const bool isLandscape : orientationsFor(options)) {
        Candidate candidate;
        candidate.isLandscape = isLandscape;
        candidate.grid = cellGridFor(emptyPlan(options, isLandscape), cellMm);
        candidate.cells = cells.size();
        cells.push_back(turnedCells(pieces, tracings, candidate.grid, 4, 2));
        tryShelves(cells.back(), candidate, options.paper.isRoll, best);
    }
    return finishedPlan(emptyPlan(options, best->isLandscape), tracings,
                        placedPieces(pieces, cells[best->cells], best->places, best->grid));
}

}  // namespace coutil
