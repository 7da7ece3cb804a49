#include <algorithm>
#include <cmath>

#include "core/geometry/tolerances.h"
#include "core/sheets/finish_plan.h"
#include "core/sheets/search_layout.h"
#include "core/sheets/sheet_grid.h"

namespace coutil {
namespace {

constexpr double kFinestCellMm = 2;
// Quarter turns: finer ones were tried (8 and 24) and saved no sheet of a dress or a corset.
constexpr int kTurns = 4;
constexpr int kRuns = 3;
constexpr long long kMovesPerEffort = 1'200'000;
// Cells of an average piece: more make every move dearer, fewer waste room between pieces.
constexpr double kCellsPerPiece = 20000;
constexpr double kSpareBoard = 1.35;

double areaMm2(const std::vector<OutlineShape>& shapes) {
    double area = 0;
    for (const auto& shape : shapes) {
        double twice = 0;
        for (std::size_t i = 0; i < shape.points.size(); ++i) {
            const Point& a = shape.points[i];
            const Point& b = shape.points[(i + 1) % shape.points.size()];
            twice += a.x() * b.y() - a.y() * b.x();
        }
        area += std::abs(twice) / 2;
    }
    return area;
}

struct Board {
    int columns = 1;
    int rows = 1;
};

// About square, with some sheets to spare, and as wide and high as the longest piece any way round.
Board boardFor(const CellGrid& grid, const TurnedCells& cells, int sheets) {
    const double area = kSpareBoard * sheets * grid.perStepX * grid.perStepY;
    int longest = 0;
    for (const auto& ways : cells) {
        for (const auto& way : ways) longest = std::max({longest, way.columns, way.rows});
    }
    const auto sheetsAlong = [&](int perStep) {
        const double side = std::max(std::sqrt(area), static_cast<double>(longest));
        return std::max(1, static_cast<int>(std::ceil(side / perStep)));
    };
    return {sheetsAlong(grid.perStepX), sheetsAlong(grid.perStepY)};
}

std::vector<CellPlace> scattered(const LayoutState& state, int pieces, SeededRandom& random) {
    std::vector<CellPlace> places;
    for (int i = 0; i < pieces; ++i) {
        const CellPlace place{random.below(state.turns()),
                              random.below(state.tiles().boardColumns()),
                              random.below(state.tiles().boardRows())};
        places.push_back(state.onBoard(i, place));
    }
    return places;
}

bool isBetter(const SheetPlan& a, const SheetPlan& b, const std::vector<Tracing>& tracings) {
    if (a.sheets.size() != b.sheets.size()) return a.sheets.size() < b.sheets.size();
    return joinsThroughPieces(a, shapesOn(a, tracings)) <
           joinsThroughPieces(b, shapesOn(b, tracings));
}

bool keepsApart(const std::vector<OutlineShape>& shapes) {
    for (std::size_t i = 0; i < shapes.size(); ++i) {
        for (std::size_t k = 0; k < i; ++k) {
            const double least = tolerance::kBetweenTracingsMm;
            if (distanceMm(shapes[i], shapes[k], least + 1) < least) return false;
        }
    }
    return true;
}

// Fine cells, but not so many that every move is dear.
double cellMmFor(double areaMm2, std::size_t pieces) {
    return std::max(kFinestCellMm,
                    std::sqrt(areaMm2 / static_cast<double>(pieces) / kCellsPerPiece));
}

// The best of several runs from scattered starts.
FoundLayout searched(const TurnedCells& cells, const CellGrid& grid, int quickSheets,
                     std::uint32_t seed, double effort, const PlanProgress& progress) {
    const Board board = boardFor(grid, cells, quickSheets);
    LayoutState state(cells, grid, board.columns, board.rows);
    SearchCourse course;
    course.moves = std::max(1LL, static_cast<long long>(effort * kMovesPerEffort / kRuns));
    FoundLayout found;
    for (int run = 0; run < kRuns; ++run) {
        SeededRandom random((static_cast<std::uint64_t>(seed) << 8) + static_cast<unsigned>(run));
        state.setAll(scattered(state, static_cast<int>(cells.size()), random));
        const bool goesOn = searchLayout(state, course, random, found, [&](double done) {
            if (!progress) return true;
            const bool isFound = !found.places.empty();
            const int sheets = isFound ? std::min(found.cost.sheets, quickSheets) : quickSheets;
            return progress((run + done) / kRuns, sheets);
        });
        if (!goesOn) break;
    }
    return found;
}

}  // namespace

Outcome<SheetPlan> planFewerSheets(const std::vector<Tracing>& tracings,
                                   const SheetOptions& options, std::uint32_t seed, double effort,
                                   const PlanProgress& progress) {
    Outcome<SheetPlan> quick = planSheets(tracings, options);
    if (!quick || quick->sheets.size() <= 1 || !(effort > 0)) return quick;
    const auto pieces = piecesToLay(tracings, options);
    const SheetPlan empty = emptyPlan(options, quick->isLandscape);
    const double area = areaMm2(shapesOn(*quick, tracings));
    const CellGrid grid = cellGridFor(empty, cellMmFor(area, pieces.size()));
    const TurnedCells cells = turnedCells(pieces, tracings, grid, kTurns, kTurns);
    const FoundLayout found =
        searched(cells, grid, static_cast<int>(quick->sheets.size()), seed, effort, progress);
    if (found.places.empty()) return quick;
    auto plan = finishedPlan(empty, tracings, placedPieces(pieces, cells, found.places, grid));
    // Judged once more by the outlines themselves, not by the cells of the search.
    const bool isSound = plan && keepsApart(shapesOn(*plan, tracings));
    return isSound && isBetter(*plan, *quick, tracings) ? plan : quick;
}

}  // namespace coutil
