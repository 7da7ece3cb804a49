#pragma once

#include <vector>

#include "core/sheets/pack_shelves.h"
#include "core/sheets/sheet_plan.h"

namespace coutil {

// The ways a page may be turned: false portrait, true landscape. A roll is never turned.
[[nodiscard]] std::vector<bool> orientationsFor(const SheetOptions& options);

// Pieces in millimetres from pieces in cells.
[[nodiscard]] std::vector<PlacedTracing> placedPieces(const std::vector<PieceToLay>& pieces,
                                                      const TurnedCells& cells,
                                                      const std::vector<CellPlace>& places,
                                                      const CellGrid& grid);

[[nodiscard]] Problem tooManySheets(const SheetOptions& options, double sheets);

// A whole plan: drops sheet columns and rows below and left of everything, finds the sheets by the
// real outlines, and cuts a roll to length. Problems: tooManySheets.
[[nodiscard]] Outcome<SheetPlan> finishedPlan(SheetPlan empty, const std::vector<Tracing>& tracings,
                                              std::vector<PlacedTracing> placed);

}  // namespace coutil
