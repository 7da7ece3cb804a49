#pragma once

#include <functional>
#include <string>
#include <vector>

#include "core/comparison/changed_lines.h"
#include "core/sheets/sheet_drawing.h"

namespace coutil {

// Words of the change sheet beside those of all sheets; %1 is replaced here. `oldState` and
// `newState` are what the lines are called ("revision 1, 2 Mar 2026").
struct ChangeWords {
    SheetWords sheet;
    std::string oldState;
    std::string newState;
    std::string oldLine;    // short, beside the line: "revision 1"
    std::string newLine;    // "revision 2", "pencil"
    std::string farthest;   // "%1 from the old line"
    std::string unchanged;  // "Unchanged and not printed: %1."
    std::string gone;       // "No longer there: %1."
    std::string added;      // "a new panel"
    std::string howToLay;   // how to lay it on the paper master
    std::function<std::string(const std::string&)> edgeName;  // key of an edge in words
    std::function<std::string(double)> length;                // mm in the maker's unit
};

// Numbers of the revisions whose ink the lines have; 0: pencil.
struct ChangeInks {
    int newRevision = 0;
};

// One strip across a panel where something changed, in a frame of its own: waist at y = 0, grain
// upright, a right panel mirrored as it is traced. `place.cutting` is the box around it; everything
// drawn lies inside.
struct ChangePiece {
    Tracing place;
    std::vector<SheetStroke> strokes;
    std::vector<SheetLettering> letterings;
};

// A strip for each stretch of height in which a panel changed, as wide as the panel, reaching to
// the nearest level: old line thin, new line in its ink, waist marks, levels, grain, names.
[[nodiscard]] std::vector<ChangePiece> changePieces(const Pattern& a, const Pattern& b,
                                                    const std::vector<PanelChange>& changes,
                                                    const ChangeInks& inks,
                                                    const ChangeWords& words);

// The pieces tiled over sheets as a pattern is.
struct ChangeSheet {
    SheetPlan plan;
    std::vector<ChangePiece> pieces;
    std::vector<SheetDrawing> pages;
};

// Only what changed from a to b, true to scale: printed lines lie within tolerance::kPrintedMm of
// the patterns. Panels without a change are named on the first page. Problems: nothingChanged
// (subject, detail: the names of the states), those of planSheets().
[[nodiscard]] Outcome<ChangeSheet> changeSheet(const Pattern& a, const Pattern& b,
                                               const ChangeInks& inks, const SheetOptions& options,
                                               const ChangeWords& words);

}  // namespace coutil
