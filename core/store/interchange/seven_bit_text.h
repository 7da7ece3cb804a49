#pragma once

#include <string>
#include <string_view>

namespace coutil::interchange {

// Text in the 7-bit characters that exchange files carry: letters of Western Europe spelled out
// ("Büste" is "Bueste"), common signs replaced, everything else "?"; one line.
[[nodiscard]] std::string sevenBitText(std::string_view utf8);

// A name for a block: capitals, digits, "_" and "-", at most 31 characters, never empty (R12).
[[nodiscard]] std::string blockName(std::string_view utf8);

}  // namespace coutil::interchange
