#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/units/length.h"

namespace coutil {

// One term of a length as typed, its sign included. The value may be infinite, never NaN.
struct LengthTerm {
    double value = 0;
    std::optional<LengthUnit> unit;
};

// The terms of a sum such as "12 + 3/8 in", nothing if the text is not one. The text is plain
// ASCII in lower case.
//   sum  = [sign] term { sign term }
//   term = number [unit]
//   number = decimal | fraction | whole (space | "-") fraction      "37 3/4", "37-3/4"
//   unit = "mm" | "cm" | "in" | "inch" | "inches" | '"'
// A hyphen with no space around it and a fraction after it belongs to the mixed number; every other
// one subtracts.
[[nodiscard]] std::optional<std::vector<LengthTerm>> readLengthSum(std::string_view text);

}  // namespace coutil
