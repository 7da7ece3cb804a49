#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "core/problems/problem.h"

namespace coutil {

// A paper in upright position. Sizes in micrometres so that tiling is exact.
struct Paper {
    std::string name;  // "A4", "Letter", "Roll 914", "200x300"
    long long widthUm = 0;
    long long heightUm = 0;

    bool operator==(const Paper&) const = default;
};

// The papers offered: A4, A3, A0, Letter, Legal, Tabloid and the usual roll widths. Sources: ISO
// 216, ANSI/ASME Y14.1.
[[nodiscard]] std::span<const Paper> knownPapers();

// By name (case does not matter), or a custom size "WIDTHxHEIGHT" in mm. Problems: paperUnknown,
// paperTooSmall.
[[nodiscard]] Outcome<Paper> paperNamed(std::string_view name);

}  // namespace coutil
