#pragma once

#include "core/sheets/sheet_drawing.h"

namespace coutil {

// Words for sheets, as long as those of the program.
[[nodiscard]] SheetWords madeUpWords();

}  // namespace coutil
