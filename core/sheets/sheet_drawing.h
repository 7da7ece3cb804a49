#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/sheets/sheet_plan.h"
#include "core/tracing/line_kind.h"

namespace coutil {

enum class SheetInk { cutting, sewing, grain, level, notch, frame, mark, pale, text };
enum class SheetDash { solid, dashed, dotted };

// A line to draw, in mm from the sheet's lower left PAPER corner, y up, correction factors already
// applied. width in mm on paper.
struct SheetStroke {
    Path path;
    double widthMm = 0.25;
    SheetDash dash = SheetDash::solid;
    SheetInk ink = SheetInk::text;
    bool isClippedToFrame = true;  // drawn only inside the sheet's frame (margins)
    // Number of a confirmed revision: the line has its colour and dash (core/revision/ink_line.h)
    // in place of `ink` and `dash`. 0: none.
    int revision = 0;
    // Its layer in a PDF; without one it is shown whatever layers are.
    std::optional<LineKind> kind = std::nullopt;
};

enum class TextAnchor { left, centre, right };

// A line of text; `at` is on the baseline; capitals are heightMm high. Always clipped to the frame.
struct SheetLettering {
    std::string text;
    Point at = Point::Zero();
    double heightMm = 3;
    double turnRad = 0;
    TextAnchor anchor = TextAnchor::left;
    SheetInk ink = SheetInk::text;
    double roomMm = 0;  // a font in which the text runs wider makes it smaller; 0: no limit
    int revision = 0;   // as for a line
    std::optional<LineKind> kind = std::nullopt;
};

// One page, free of any device: what a painter needs and nothing else.
struct SheetDrawing {
    std::string
        name;  // "B3"; the first page with map and test square has its own name from the words
    double widthMm = 0;
    double heightMm = 0;
    double marginMm = 0;
    std::vector<SheetStroke> strokes;
    std::vector<SheetLettering> letterings;
};

// Every word on the sheets, made in ui in the user's language (ui/words/sheet_words.h). %1, %2 are
// replaced here.
struct SheetWords {
    TracingTitle title;
    std::string firstSheet;            // name of the first page
    std::string scaleNote;             // "Print at 100 %, actual size, no fitting"
    std::string pageOf;                // "Page %1 of %2"
    std::string sheetLabel;            // "Sheet %1"
    std::string mapHeading;            // "Sheet map: %1 sheets"
    std::string measureFirst;          // how to measure square and bar, in both directions
    std::string measureBeforeCutting;  // the same where everything is on one page
    std::string correctionHint;        // what to type in when they are off
    std::string joinHint;              // how to cut and join the sheets
    std::string square;                // "100 mm"
    std::string bar;                   // "4 in"
    std::string pencil;                // "pencil"
    std::string revision;              // "revision %1"
    std::string cutCount;              // "cut %1"
    std::string mirroredPair;          // "one mirrored"
    std::string mirroredTwin;          // "mirrored": the printed twin of a pair
    std::string onFold;                // "on the fold"
    std::string panel;                 // "panel %1"
    std::string leftSide;              // "left"
    std::string rightSide;             // "right"
    std::string grain;                 // "grain"
    std::string estimates;  // one line per estimate shown on the first sheet, may be empty
    std::vector<std::string> cautions;
    // Names of levels by their key; a level without one (the maker's own) shows its key.
    std::map<std::string, std::string> levels;
};

// The pages of the plan in order (pagesOf). The first shows sheet map, 100 mm square, 4 in bars and
// words, on a page of its own or on a sheet that has room for them beside the pattern. The square
// and the bars carry the correction factors too, so that a corrected print proves itself.
[[nodiscard]] std::vector<SheetDrawing> drawSheets(const SheetPlan& plan,
                                                   const std::vector<Tracing>& tracings,
                                                   const SheetWords& words);

}  // namespace coutil
