#pragma once

#include <string>
#include <string_view>

#include "core/problems/problem.h"

namespace coutil {

enum class LengthUnit { millimetre, centimetre, inch };

// Millimetres in one unit. 1 in = 25.4 mm exactly (international inch).
[[nodiscard]] double millimetresIn(LengthUnit unit);

// "mm", "cm", "in".
[[nodiscard]] std::string_view keyOf(LengthUnit unit);

// Reads a length: "96", "96 cm", "32,5 cm", "37 3/4 in", "37-3/4\"", "1.5 in", "380 mm", and sums
// of such terms ("12 + 3/8 in", "96 - 2"). A term without a unit takes the unit named later in the
// same sum, else `assumed`. Comma and point are both decimal marks. Returns mm. Problems:
// lengthUnreadable (detail = the text, cut after 60 bytes), lengthOutOfRange (beyond +-100 m;
// figure "limit"). A negative result is not a problem here; where lengths must be positive the
// caller says so. Also read: typographic inch marks, minus and fractions, and "~" in front, which
// writtenLength() may put there. Texts over 100 bytes are unreadable.
[[nodiscard]] Outcome<double> readLengthMm(std::string_view text, LengthUnit assumed);

// Text of a length without the unit's name. cm with up to 2 decimals ("96", "32.5"), mm with 1,
// inches as whole and reduced fraction to 1/16 ("37 3/4"), rounding carried into the whole; a
// rounded fraction further off than 1/200 in is preceded by "~". decimalMark is '.' or ','. Empty
// for a value that is not finite.
[[nodiscard]] std::string writtenLength(double mm, LengthUnit unit, char decimalMark = '.');

// The same followed by a space and the unit's name: "96 cm", "37 3/4 in".
[[nodiscard]] std::string writtenLengthWithUnit(double mm, LengthUnit unit, char decimalMark = '.');

}  // namespace coutil
