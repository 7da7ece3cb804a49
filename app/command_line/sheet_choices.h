#pragma once

#include <cstdint>
#include <vector>

#include "app/command_line/call.h"
#include "core/problems/problem.h"
#include "core/sheets/sheet_plan.h"
#include "core/tracing/tracing.h"

namespace coutil {

// How the sheets of a call are to be laid out.
struct SheetChoices {
    SheetOptions options;
    std::uint32_t seed = 1;
    double effort = 1;  // 0: the quick layout
};

// Reads the options of a call. Problems: optionBadValue, optionsExclude, and those of paperNamed()
// and checkSheetOptions().
[[nodiscard]] Outcome<SheetChoices> readSheetChoices(const Call& call);

// The same choices always give the same plan.
[[nodiscard]] Outcome<SheetPlan> plannedSheets(const std::vector<Tracing>& tracings,
                                               const SheetChoices& choices);

}  // namespace coutil
