#pragma once

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

#include "core/geometry/path.h"
#include "core/sheets/paper.h"
#include "core/tracing/tracing.h"

namespace coutil {

enum class Orientation { whicheverFewer, portrait, landscape };

struct SheetOptions {
    Paper paper{"A4", 210000, 297000};
    Orientation orientation = Orientation::whicheverFewer;
    long long marginUm = 10000;
    long long overlapUm = 10000;
    double scaleX = 1;  // correction factors of the printer, 0.97 to 1.03
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

// Which tracing lies where and which sheets that touches. All arithmetic of the grid is in whole
// micrometres.
struct SheetPlan {
    SheetOptions options;
    bool isLandscape = false;
    long long sheetWidthUm = 0;  // as turned
    long long sheetHeightUm = 0;
    long long stepXUm = 0;  // distance of neighbouring sheets on the drawing
    long long stepYUm = 0;
    int rows = 0;
    int columns = 0;
    std::vector<PlacedTracing> placed;
    std::vector<Sheet> sheets;  // those with something on them, row by row
};

// Checks options; empty when sound.
[[nodiscard]] std::vector<Problem> checkSheetOptions(const SheetOptions& options);

// A good arrangement at once (a few ms): shelves with the best grid shift and turns. Deterministic.
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
