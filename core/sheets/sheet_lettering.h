#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/sheets/sheet_drawing.h"

namespace coutil {

// About how wide a text runs whose capitals are heightMm high, mm: a rather wide sans-serif, so
// that what fits here fits in most fonts. An estimate; the painter has the last word (roomMm).
[[nodiscard]] double aboutWidthMm(std::string_view text, double heightMm);

// Baselines of lines of text lie this many capital heights apart.
inline constexpr double kLineSpacing = 1.7;

// The text broken at blanks into lines not wider than widthMm; a single word may be wider. Newlines
// break too.
[[nodiscard]] std::vector<std::string> wrapped(std::string_view text, double widthMm,
                                               double heightMm);

// `pattern` with %1 and %2 replaced.
[[nodiscard]] std::string filled(const std::string& pattern, const std::string& first,
                                 const std::string& second = {});

// The parts that are not empty, with a text between.
[[nodiscard]] std::string joinedBy(const std::vector<std::string>& parts, std::string_view between);

// "Garment, client" and "revision 3, 2026-03-14" as the title asks.
[[nodiscard]] std::string stateOf(const SheetWords& words);
[[nodiscard]] std::string titleLine(const SheetWords& words);

// Where a line of text lies: about the box it takes, turned text as its upright box.
[[nodiscard]] Box aboutBox(const SheetLettering& lettering);

}  // namespace coutil
