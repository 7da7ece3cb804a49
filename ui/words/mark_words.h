#pragma once

#include <QString>

#include "core/alterations/mark.h"
#include "core/units/length.h"

// Marks in words; lengths in the maker's unit.
namespace coutil {

// Where a mark was read: "seam 2-3 at +35 mm"; "panel 3, 40 mm over the waist"; empty for nowhere.
[[nodiscard]] QString markPlaceText(const MarkPlace& place, LengthUnit unit);

// "pinned 8 mm", "cuts in".
[[nodiscard]] QString markAmountText(const Mark& mark, LengthUnit unit);

// "seam 2-3 at +35 mm: pinned 8 mm, left".
[[nodiscard]] QString markSentence(const Mark& mark, LengthUnit unit);

// Gapes, cuts in, bone pokes: looked at, not measured.
[[nodiscard]] bool isNote(MarkKind kind);

}  // namespace coutil
