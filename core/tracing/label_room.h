#pragma once

#include <vector>

#include "core/geometry/cubic.h"
#include "core/pattern/pattern.h"

namespace coutil {

// Where words can stand on a panel.
struct LabelRoom {
    Box label;   // empty where there is none
    Box number;  // a square, empty where there is none
};

// The best rooms inside the sewing line, found on bands of kLabelBandMm: level rectangles clear of
// grain line and levels by kLabelClearMm. The label gets the room where a label of 60 x 25 mm could
// be largest, up to full size, among equals the largest area; the number the largest square that is
// left. Where all levels together leave less than half size for the label, only the waist is kept
// clear.
[[nodiscard]] LabelRoom labelRoomOf(const Panel& panel);

inline constexpr double kLabelBandMm = 4;
inline constexpr double kLabelClearMm = 2;

}  // namespace coutil
