#pragma once

#include <vector>

#include "core/tracing/tracing.h"
#include "core/units/length.h"
#include "ui/canvas/table_scene.h"

namespace coutil {

// "cut 2, one mirrored", "cut 1 on the fold".
[[nodiscard]] QString cutWords(const Tracing& tracing);

// One tracing where it lies: sewing and cutting line, notches, levels, grain, number and label.
[[nodiscard]] ScenePanel tracingPanel(const Tracing& tracing, const Placement& placement,
                                      LengthUnit unit);

// The tracings side by side in the order of the panels, waists in one line, room between them.
[[nodiscard]] std::vector<Placement> tracingPlacements(const std::vector<Tracing>& tracings);
[[nodiscard]] TableScene tracingScene(const std::vector<Tracing>& tracings, LengthUnit unit);

}  // namespace coutil
