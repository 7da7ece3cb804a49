#pragma once

#include <QString>
#include <optional>

#include "core/units/length.h"

namespace coutil {

// A difference below this is told as none: half of the last 0.1 mm that lengths are written to.
inline constexpr double kSmallestToldMm = 0.05;

// A figure of a table without its unit, a dash where there is none.
[[nodiscard]] QString figureText(std::optional<double> mm, LengthUnit unit);
// The same with its sign; "0" where it would read as nothing.
[[nodiscard]] QString differenceText(std::optional<double> mm, LengthUnit unit);
// With sign and unit, as a place along a seam is told: "+35 mm".
// A round figure at an axis, as short as it can be.
[[nodiscard]] QString axisText(double mm, LengthUnit unit);
[[nodiscard]] QString placeText(double mm, LengthUnit unit);
[[nodiscard]] QString squareText(std::optional<double> mm2, LengthUnit unit);
[[nodiscard]] QString squareDifferenceText(std::optional<double> mm2, LengthUnit unit);
[[nodiscard]] QString squareUnitName(LengthUnit unit);  // "cm²"

}  // namespace coutil
