#pragma once

#include <QColor>
#include <QList>
#include <QPen>

namespace coutil {

// The ink of a revision on the table of one theme: at least 3 : 1 against the table's paper and
// tints (tested). Hues and dashes are those of core/revision/ink_line.h.
struct InkLook {
    QColor colour;
    QList<qreal> dash;  // in widths of the line, as QPen has it; empty: unbroken
};
[[nodiscard]] InkLook inkLook(int revisionNumber, bool isDark);

// The same for white paper.
[[nodiscard]] InkLook inkLookOnPaper(int revisionNumber);

// A pen with it; butt ends, so that dashes keep their lengths.
[[nodiscard]] QPen inkPen(const InkLook& look, double width);

}  // namespace coutil
