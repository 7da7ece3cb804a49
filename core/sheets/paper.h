#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "core/problems/problem.h"

namespace coutil {

// No page is ever longer than this: many readers of PDF know no page beyond 14,400 points.
inline constexpr long long kLongestPageUm = 5'080'000;

// A paper in upright position. Sizes in micrometres so that tiling is exact.
struct Paper {
    std::string name;  // "A4", "Letter", "Roll 914", "200x300"
    long long widthUm = 0;
    long long heightUm = 0;  // of a roll: the longest page that may be cut from it
    bool isRoll = false;     // pages are made only as long as what is on them
    // No paper at all: one page, as large as everything laid out compactly. Also a roll.
    bool isOnePage = false;

    bool operator==(const Paper&) const = default;
};

// One big page, for a copy shop, a projector or another program.
[[nodiscard]] Paper onePage();

// The papers offered: A4, A3, A0, Letter, Legal, Tabloid, rolls 610, 914 and 1067 mm wide, and one
// big page.
// Sources: ISO 216 (A series), ANSI/ASME Y14.1 (Letter, Legal, Tabloid), both from memory; the
// roll widths are 24, 36 and 42 in rounded to the millimetre, common practice, no source.
[[nodiscard]] std::span<const Paper> knownPapers();

// By name (case and blanks do not matter), or a custom size "WIDTHxHEIGHT" in mm, as held upright
// with the first number across, decimals allowed ("215.9x279.4"). Problems, subject "paper", detail
// the text as given: paperUnknown (neither a name nor a size); paperTooSmall (figures "value" the
// lesser and "limit" the least side that serves); sheetOptionOutOfRange (a side longer than
// kLongestPageUm; figures "value", "lowest", "highest").
[[nodiscard]] Outcome<Paper> paperNamed(std::string_view name);

}  // namespace coutil
