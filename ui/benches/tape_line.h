#pragma once

#include <QPainterPath>

#include "core/measurements/measurement.h"
#include "ui/benches/body_figure.h"

namespace coutil {

// Where the tape goes for one measurement, on the drawn body (body_figure.h). Every measurement has
// a line of its own.
struct TapeLine {
    FigureView view = FigureView::front;
    QPainterPath seen;     // the tape on the near side
    QPainterPath hidden;   // behind the body
    QPainterPath levels;   // the heights it is measured between
    bool hasEnds = false;  // a length: its ends are marked
};
[[nodiscard]] TapeLine tapeLineOf(Measurement id);

}  // namespace coutil
