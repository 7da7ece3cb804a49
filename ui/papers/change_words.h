#pragma once

#include "core/sheets/change_sheet.h"
#include "core/units/length.h"

namespace coutil {

// The two states of a change sheet in words: "revision 1, 02/03/2026" and, beside a line, "revision
// 1".
struct StateWords {
    std::string state;
    std::string line;
};

// Every word of a change sheet, in the user's language; `title` is that of the newer state.
[[nodiscard]] ChangeWords changeWords(const TracingTitle& title, const StateWords& older,
                                      const StateWords& newer, const SheetOptions& options,
                                      LengthUnit unit);

}  // namespace coutil
