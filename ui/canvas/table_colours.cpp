#include "ui/canvas/table_colours.h"

#include <algorithm>
#include <cmath>

namespace coutil {

bool isDark(const QPalette& palette) {
    return palette.color(QPalette::Window).lightness() <
           palette.color(QPalette::WindowText).lightness();
}

const TableColours& tableColours(bool isDark) {
    // Halo and problem colours: Okabe and Ito 2008 (blue, sky blue, vermilion), from memory.
    static const TableColours light{
        .paper = QColor(0xFC, 0xFA, 0xF4),
        .tints = {QColor(0xF5, 0xEE, 0xE0), QColor(0xEB, 0xF1, 0xEA), QColor(0xEC, 0xEF, 0xF5),
                  QColor(0xF4, 0xEB, 0xEF)},
        .ink = QColor(0x1E, 0x1E, 0x20),
        .graphite = QColor(0x4C, 0x4D, 0x52),
        .cutting = QColor(0x55, 0x55, 0x58),
        .before = QColor(0x90, 0x7C, 0x68),
        .level = QColor(0x72, 0x89, 0x97),
        .waist = QColor(0x3E, 0x6C, 0x88),
        .text = QColor(0x4A, 0x52, 0x58),
        .paleNumber = QColor(0xC6, 0xBF, 0xB4),
        .ruler = QColor(0xF1, 0xED, 0xE3),
        .sheet = QColor(0x8A, 0x82, 0x74),
        .halo = QColor(0x00, 0x72, 0xB2),
        .problem = QColor(0xD5, 0x5E, 0x00),
    };
    static const TableColours dark{
        .paper = QColor(0x22, 0x27, 0x2D),
        .tints = {QColor(0x2D, 0x2F, 0x31), QColor(0x28, 0x31, 0x31), QColor(0x2A, 0x2F, 0x38),
                  QColor(0x30, 0x2D, 0x34)},
        .ink = QColor(0xF0, 0xF1, 0xF2),
        .graphite = QColor(0xC2, 0xC6, 0xCB),
        .cutting = QColor(0xB0, 0xB4, 0xB9),
        .before = QColor(0x94, 0x88, 0x7C),
        .level = QColor(0x7C, 0x93, 0xA3),
        .waist = QColor(0x9C, 0xC3, 0xDB),
        .text = QColor(0xC3, 0xCA, 0xD0),
        .paleNumber = QColor(0x55, 0x5C, 0x64),
        .ruler = QColor(0x2B, 0x31, 0x38),
        .sheet = QColor(0x8E, 0x93, 0x98),
        .halo = QColor(0x56, 0xB4, 0xE9),
        .problem = QColor(0xF0, 0x8A, 0x3C),
    };
    return isDark ? dark : light;
}

double contrast(const QColor& a, const QColor& b) {
    const auto luminance = [](const QColor& c) {
        const auto linear = [](double v) {
            return v <= 0.03928 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4);
        };
        return 0.2126 * linear(c.redF()) + 0.7152 * linear(c.greenF()) + 0.0722 * linear(c.blueF());
    };
    const double la = luminance(a);
    const double lb = luminance(b);
    return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

}  // namespace coutil
