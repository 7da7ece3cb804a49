#pragma once

#include <string>
#include <vector>

#include "app/command_line/call.h"
#include "core/block/style.h"
#include "core/measurements/measurement_set.h"
#include "core/problems/problem.h"

namespace coutil {

// What a block is drafted from.
struct DraftInput {
    MeasurementSet set;
    Style style;
};

// Problems of one source: a file, or one --set.
struct InputFault {
    std::string where;
    std::vector<Problem> problems;
};

// Reads the call's --measurements and --style and puts every --set over them. Faults of all sources
// at once; without faults the input is good.
struct ReadInput {
    DraftInput input;
    std::vector<InputFault> faults;
};
[[nodiscard]] ReadInput readDraftInput(const Call& call);

}  // namespace coutil
