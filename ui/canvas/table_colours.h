#pragma once

#include <QColor>
#include <QPalette>
#include <array>

namespace coutil {

// The colours of the table in one theme: paper, thin lines, faint tints. Every text stands at least
// 4.5 : 1 against the paper, every line at least 3 : 1 against paper and tints (tested).
struct TableColours {
    QColor paper;
    std::array<QColor, 4> tints;  // neighbours get different ones
    QColor ink;                   // confirmed sewing lines
    QColor graphite;              // pencil sewing lines
    QColor cutting;
    QColor before;  // lines as they were
    QColor level;
    QColor waist;
    QColor text;
    QColor paleNumber;  // large numerals behind the lines: decoration, told in words elsewhere
    QColor ruler;
    QColor sheet;
    QColor halo;     // under the pointer, picked
    QColor problem;  // where a problem is
};

// Light or dark by the palette's window and text lightness.
[[nodiscard]] bool isDark(const QPalette& palette);
[[nodiscard]] const TableColours& tableColours(bool isDark);

// Contrast ratio 1 to 21. Source: WCAG 2.1, relative luminance (W3C).
[[nodiscard]] double contrast(const QColor& a, const QColor& b);

}  // namespace coutil
