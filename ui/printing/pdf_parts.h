#pragma once

#include <optional>
#include <vector>

#include "core/sheets/sheet_drawing.h"

namespace coutil {

// What of a page belongs to one layer, or to none; painted one over the other in their order.
struct PdfPart {
    std::optional<LineKind> kind;
    SheetDrawing drawing;
};

// A page taken apart: pale letterings first, since they lie under the lines, then kind by kind in
// the order of LineKind, what has none before all others. Never empty; a page on which nothing has
// a kind is one part.
[[nodiscard]] std::vector<PdfPart> partsOf(const SheetDrawing& drawing);

}  // namespace coutil
