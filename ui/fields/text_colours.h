#pragma once

#include <QColor>
#include <QPalette>

namespace coutil {

// Colours that a palette has no role for, of at least 4.5 : 1 on the window and base of the
// program's palettes (WCAG 2.1, 1.4.3; tested with the themes).
[[nodiscard]] QColor errorColour(const QPalette& palette);
[[nodiscard]] QColor warningColour(const QPalette& palette);
[[nodiscard]] QColor tapeColour(const QPalette& palette);   // the measuring tape on the figure
[[nodiscard]] QColor quietColour(const QPalette& palette);  // text that steps back: notes, units

// The palette with its text (WindowText) in another colour: for one label.
[[nodiscard]] QPalette withText(QPalette palette, const QColor& colour);

}  // namespace coutil
