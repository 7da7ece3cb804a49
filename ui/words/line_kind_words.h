#pragma once

#include <QString>

#include "core/tracing/line_kind.h"

namespace coutil {

// What people call a kind of line, in the user's language: "Cutting lines".
[[nodiscard]] QString lineKindName(LineKind kind);

}  // namespace coutil
