#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/geometry/cubic.h"
#include "core/geometry/path.h"
#include "core/sheets/paper.h"
#include "core/tracing/tracing.h"

namespace coutil {

enum class Orientation { whicheverFewer, portrait, landscape };

// A plan never has more sheets than this.
inline constexpr int kMostSheets = 400;

// Correction factors belong to the printer, not to the way the page is turned: scaleX acts across
// the paper held upright (its short side, for the known papers), scaleY along it. Drawing times
// factor lands on paper; a printer that makes 100 mm into `measured` mm wants 100 / measured.
struct SheetOptions {
    Paper paper{"A4", 210000, 297000};
    Orientation orientation = Orientation::whicheverFewer;
    long long marginUm = 10000;   // 0 to 50 mm
    long long overlapUm = 10000;  // 0 to 40 mm, at most a third of what a sheet shows
    double scaleX = 1;            // 0.97 to 1.03: beyond that it is no longer a correction
    double scaleY = 1;
    bool mirroredToo = false;  // print the mirrored twin of every pair as well

    bool operator==(const SheetOptions&) const = default;
};

// A tracing on the big drawing: x right, y UP, in mm from the drawing's lower left corner.
struct PlacedTracing {
    std::size_t tracing = 0;
    Placement placement;
};

// One sheet of the grid. Row 0 is the TOP row and called "A"; column 0 is the left one and
// called 1.
struct Sheet {
    int row = 0;
    int column = 0;
    bool operator==(const Sheet&) const = default;
};
[[nodiscard]] std::string nameOf(const Sheet& sheet);  // "B3"; rows after Z go AA, AB, ...

// The first page's square, bars, map and words, where they lie on a sheet of the pattern.
struct FirstBlock {
    std::size_t sheet = 0;  // index in the plan's sheets
    Box box;                // on the drawing, mm; free of tracings
};

// Which tracing lies where and which sheets that touches. All arithmetic of the grid is in whole
// micrometres. Column 0 starts at x = 0, the lowest row at y = 0.
struct SheetPlan {
    SheetOptions options;
    bool isLandscape = false;
    long long sheetWidthUm = 0;  // as turned; of a roll, cut to the length that is used
    long long sheetHeightUm = 0;
    long long frameXUm = 0;  // what one sheet shows of the drawing: its paper inside the margins,
    long long frameYUm = 0;  // with the correction factors taken out again
    long long stepXUm = 0;   // distance of neighbouring sheets on the drawing
    long long stepYUm = 0;
    int rows = 0;
    int columns = 0;
    std::vector<PlacedTracing> placed;
    std::vector<Sheet> sheets;             // those with something on them, row by row
    std::optional<FirstBlock> firstBlock;  // none: the first page is a page of its own
};

// Pages as they are printed, from 0: a first page of its own, or the sheet that carries the first
// block; then the sheets row by row.
[[nodiscard]] int pagesOf(const SheetPlan& plan);
// The sheet (index) on a page, none for a first page of its own.
[[nodiscard]] std::optional<std::size_t> sheetOnPage(const SheetPlan& plan, int page);
[[nodiscard]] int pageOfSheet(const SheetPlan& plan, std::size_t sheet);

// The factors that act along x and y of the drawing, as the page is turned.
struct Correction {
    double x = 1;
    double y = 1;
};
[[nodiscard]] Correction correctionOf(const SheetPlan& plan);

// What a sheet shows, on the drawing in mm. Neighbours' frames overlap by the overlap (on paper by
// options.overlapUm, never less, at most 0.0021 mm more).
[[nodiscard]] Box frameOf(const SheetPlan& plan, const Sheet& sheet);

// A place of the drawing on a sheet's paper, mm from its lower left corner, y up, corrected.
[[nodiscard]] Point onPaper(const SheetPlan& plan, const Sheet& sheet, const Point& drawingMm);

// Checks options; empty when sound. Problems: paperTooSmall (figures "value" the lesser side inside
// the margins, "limit"), sheetOptionOutOfRange (subject "margin", "overlap", "scale-x" or
// "scale-y"; figures "value", "lowest", "highest").
[[nodiscard]] std::vector<Problem> checkSheetOptions(const SheetOptions& options);

// A good arrangement at once (a few ms): shelves with the best grid shift and turns. Deterministic.
// A sheet is kept if any part of a piece lies on it that no other sheet shows. Problems: those of
// checkSheetOptions, tooManySheets (figures "value", "limit").
[[nodiscard]] Outcome<SheetPlan> planSheets(const std::vector<Tracing>& tracings,
                                            const SheetOptions& options);

// Told the fraction done (0..1) and the sheets of the best so far; returns false to stop.
using PlanProgress = std::function<bool(double done, int sheets)>;

// The better arrangement: a seeded search with a fixed number of moves, so the same seed gives the
// same plan on any machine; never worse than planSheets(). `effort` 1 takes a few seconds for 16
// panels on A4. Stopped early it returns the best so far.
[[nodiscard]] Outcome<SheetPlan> planFewerSheets(const std::vector<Tracing>& tracings,
                                                 const SheetOptions& options, std::uint32_t seed,
                                                 double effort, const PlanProgress& progress = {});

}  // namespace coutil
