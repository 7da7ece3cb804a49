#pragma once

#include "ui/canvas/table_scene.h"
#include "ui/comparing/compared_layout.h"

namespace coutil {

// One panel of the scene a pair of the comparison, in its order.

// a and b over each other: b's line over a's panels, its difference multiplied by `factor`.
[[nodiscard]] TableScene overlaidScene(const ComparedStates& states, const ComparedLayout& layout,
                                       double factor, LengthUnit unit);

// a or b by itself, every panel where the overlaid scene has it, so that one view shows the same
// places of both. A pair that it has no panel of stays empty.
enum class ComparedOne { a, b };
[[nodiscard]] TableScene singleScene(const ComparedStates& states, const ComparedLayout& layout,
                                     ComparedOne which, LengthUnit unit);

// "differences drawn 5 times as large"; empty for 1.
[[nodiscard]] QString factorWords(double factor);

}  // namespace coutil
