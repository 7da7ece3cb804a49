#pragma once

#include <QFont>
#include <QRectF>
#include <QString>

#include "core/units/length.h"
#include "ui/canvas/table_colours.h"
#include "ui/canvas/table_view.h"

class QPainter;

namespace coutil {

// How a ruler is divided at one scale: figures at every labelMm, ticks at every tickMm; a whole
// number of ticks fits between two figures.
struct RulerSteps {
    double labelMm = 10;
    double tickMm = 1;
};

// Steps a maker reads without counting: 1, 2, 5 times ten in metric; halves down to 1/16 and
// whole, six, twelve inches up. Figures at least 46 px apart, ticks at least 5 px (unless the
// finest step is wider).
[[nodiscard]] RulerSteps rulerSteps(LengthUnit unit, double pxPerMm);

inline constexpr double kTopRulerPx = 20;
inline constexpr double kSideRulerPx = 40;

// Both rulers along the upper and left side of `area`, zero at zeroMm.
void paintRulers(QPainter& painter, const QRectF& area, const TableView& view, LengthUnit unit,
                 const QPointF& zeroMm, const TableColours& colours, const QFont& font);

}  // namespace coutil
