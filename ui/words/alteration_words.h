#pragma once

#include <QString>
#include <string>
#include <string_view>

#include "core/alterations/alteration.h"
#include "core/alterations/mark.h"

namespace coutil {

// Words for kinds of alterations ("shape_seam": "shape a seam") and marks ("cuts_in": "cuts in");
// empty for a key that is none.
[[nodiscard]] QString alterationTerm(std::string_view kind);
[[nodiscard]] QString markTerm(std::string_view kind);

// "left", "right", "both sides".
[[nodiscard]] QString sideName(BodySide side);

// A panel as people call it: "2", or "2 left" where the sides differ.
[[nodiscard]] QString panelName(const std::string& panel);

}  // namespace coutil
