#include "tests/core/sheets/made_up_words.h"

namespace coutil {

SheetWords madeUpWords() {
    SheetWords made;
    made.title = {"Corset of the second act", "Rosalinde Amsel", "3", "2026-03-14", false};
    made.firstSheet = "first";
    made.scaleNote = "Print at 100 % (actual size), never fit to page";
    made.pageOf = "page %1 of %2";
    made.sheetLabel = "Sheet %1";
    made.mapHeading = "Sheet map, %1 sheets";
    made.revision = "revision %1";
    made.panel = "panel %1";
    made.cutCount = "cut %1";
    made.mirroredPair = "one mirrored";
    made.onFold = "on the fold";
    made.measureFirst = "measure before the rest";
    made.measureBeforeCutting = "measure before you cut";
    made.joinHint = "lay on the dashed line";
    made.square = "100 mm";
    made.bar = "4 in";
    return made;
}

}  // namespace coutil
