#pragma once

#include <string>
#include <string_view>

#include "core/making_up/making_up_choices.h"
#include "core/problems/problem.h"
#include "core/tracing/tracing_choices.h"

namespace coutil {

// The choices of making-up and tracing as JSON text ("making_up", "tracing_choices"; every key in
// DEVELOPERS.md), read and written as styles are: what is left out keeps its default; a list
// replaces the default one as a whole. Whether the values make sense is for makeUp().
[[nodiscard]] Outcome<MakingUpChoices> readMakingUpJson(std::string_view text);
[[nodiscard]] std::string writeMakingUpJson(const MakingUpChoices& choices);
[[nodiscard]] Outcome<TracingChoices> readTracingChoicesJson(std::string_view text);
[[nodiscard]] std::string writeTracingChoicesJson(const TracingChoices& choices);

}  // namespace coutil
