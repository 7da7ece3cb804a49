#include "core/sheets/finish_plan.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/tolerances.h"
#include "core/sheets/place_first_block.h"
#include "core/sheets/sheet_grid.h"

namespace coutil {
namespace {

double mm(long long um) { return static_cast<double>(um) / 1000; }

// Moves everything by whole sheets to the lower left, so that names start at A1. A piece that only
// reaches into the first overlap needs nothing from the sheet before.
void dropEmptyStart(SheetPlan& plan, std::vector<OutlineShape>& shapes) {
    Box all;
    for (const auto& shape : shapes) all.include(shape.box);
    const Vector low = all.lowest - Vector::Constant(tolerance::kHalfPenMm);
    const Vector shift(-std::floor(low.x() / mm(plan.stepXUm)) * mm(plan.stepXUm),
                       -std::floor(low.y() / mm(plan.stepYUm)) * mm(plan.stepYUm));
    for (auto& piece : plan.placed) piece.placement.shift += shift;
    for (auto& shape : shapes) {
        for (Point& p : shape.points) p += shift;
        shape.box = {shape.box.lowest + shift, shape.box.highest + shift};
    }
}

// A roll's page ends where the pieces and the first block do, on a whole centimetre; without that
// block it leaves room for a first page of its own.
void cutRoll(const std::vector<OutlineShape>& shapes, SheetPlan& plan) {
    if (!plan.options.paper.isRoll || plan.rows != 1) return;
    constexpr double kShortestFrameMm = 280;
    double top = plan.firstBlock ? plan.firstBlock->box.highest.y() : kShortestFrameMm;
    for (const auto& shape : shapes) {
        top = std::max(top, shape.box.highest.y() + tolerance::kHalfPenMm);
    }
    const double onPaperMm = top * correctionOf(plan).y + 2 * mm(plan.options.marginUm);
    const long long lengthUm = static_cast<long long>(std::ceil(onPaperMm / 10)) * 10'000;
    if (lengthUm >= plan.sheetHeightUm) return;
    const long long shorterUm = static_cast<long long>(
        static_cast<double>(plan.sheetHeightUm - lengthUm) / correctionOf(plan).y);
    plan.sheetHeightUm = lengthUm;
    plan.frameYUm -= shorterUm + 1;
    plan.stepYUm -= shorterUm + 1;
}

}  // namespace

std::vector<bool> orientationsFor(const SheetOptions& options) {
    if (options.paper.isRoll) return {false};
    switch (options.orientation) {
        case Orientation::portrait:
            return {false};
        case Orientation::landscape:
            return {true};
        case Orientation::whicheverFewer:
            return {false, true};
    }
    return {false};
}

std::vector<PlacedTracing> placedPieces(const std::vector<PieceToLay>& pieces,
                                        const TurnedCells& cells,
                                        const std::vector<CellPlace>& places,
                                        const CellGrid& grid) {
    std::vector<PlacedTracing> placed;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const auto& ways = cells[i];
        placed.push_back(
            {pieces[i].tracing, placementAt(ways[static_cast<std::size_t>(places[i].turn)], grid,
                                            places[i].x, places[i].y)});
    }
    return placed;
}

Outcome<SheetPlan> finishedPlan(SheetPlan empty, const std::vector<Tracing>& tracings,
                                std::vector<PlacedTracing> placed) {
    SheetPlan plan = std::move(empty);
    plan.placed = std::move(placed);
    if (plan.placed.empty()) return plan;
    std::vector<OutlineShape> shapes = shapesOn(plan, tracings);
    dropEmptyStart(plan, shapes);
    keepSheetsUnder(shapes, plan);
    placeFirstBlock(shapes, plan);
    cutRoll(shapes, plan);
    if (static_cast<int>(plan.sheets.size()) <= kMostSheets) return plan;
    return tooManySheets(plan.options, static_cast<double>(plan.sheets.size()));
}

Problem tooManySheets(const SheetOptions& options, double sheets) {
    Problem problem;
    problem.code = ProblemCode::tooManySheets;
    problem.subject = "paper";
    problem.detail = options.paper.name;
    problem.figures = {{"value", sheets, FigureUnit::count},
                       {"limit", static_cast<double>(kMostSheets), FigureUnit::count}};
    return problem;
}

}  // namespace coutil
