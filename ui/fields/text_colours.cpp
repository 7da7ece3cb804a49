#include "ui/fields/text_colours.h"

#include "ui/canvas/table_colours.h"

namespace coutil {

QColor errorColour(const QPalette& palette) {
    return isDark(palette) ? QColor(0xff, 0x9b, 0x85) : QColor(0xa8, 0x2a, 0x1a);
}

QColor warningColour(const QPalette& palette) {
    return isDark(palette) ? QColor(0xf0, 0xb8, 0x60) : QColor(0x86, 0x51, 0x00);
}

QColor tapeColour(const QPalette& palette) {
    return isDark(palette) ? QColor(0xf2, 0xa2, 0x4e) : QColor(0xb4, 0x4c, 0x00);
}

QColor quietColour(const QPalette& palette) { return palette.color(QPalette::PlaceholderText); }

QPalette withText(QPalette palette, const QColor& colour) {
    palette.setColor(QPalette::WindowText, colour);
    return palette;
}

}  // namespace coutil
