#pragma once

#include <QRectF>
#include <vector>

#include "ui/canvas/scene_painter.h"

namespace coutil {

// What the signs of a scene take up on the screen, px, in their order.
struct SignPlace {
    QRectF shape;
    QRectF words;  // null: none
};

// The words of a sign stand beside it where no line, no other sign and no words of another run;
// where no such place is near, where at least no other words are.
[[nodiscard]] std::vector<SignPlace> signPlaces(const TableLook& look);

}  // namespace coutil
