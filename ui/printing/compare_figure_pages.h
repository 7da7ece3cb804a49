#pragma once

#include "ui/printing/compare_pages.h"

namespace coutil {

// The tables of figures and the alterations between, in two columns a page.
[[nodiscard]] std::vector<SheetDrawing> figurePages(const ComparedStates& states,
                                                    const ComparePaper& paper);

}  // namespace coutil
