#pragma once

#include "app/command_line/call.h"
#include "core/problems/problem.h"
#include "core/store/interchange.h"

namespace coutil {

// --kerf and --mirrored-too of a call. Problems: optionBadValue ("lowest", "highest").
[[nodiscard]] Outcome<CutterChoices> readCutterChoices(const Call& call);

}  // namespace coutil
