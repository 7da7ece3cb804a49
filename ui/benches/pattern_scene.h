#pragma once

#include "core/pattern/pattern.h"
#include "core/units/length.h"
#include "ui/benches/problem_spot.h"
#include "ui/canvas/table_scene.h"

namespace coutil {

inline constexpr double kSpaceBetweenPanelsMm = 34;

// The master as it lies on the table: panels side by side, levels across all of them, the figures
// of every edge and level in the maker's unit. Panel and edge numbers are those of the pattern.
[[nodiscard]] TableScene patternScene(const Pattern& pattern, LengthUnit unit);

// The figures of one seam or other edge, of a level, of a panel; a line each, in words.
[[nodiscard]] QString edgeFigures(const Pattern& pattern, const EdgeRef& ref, LengthUnit unit);
[[nodiscard]] QString levelFigures(const Level& level, LengthUnit unit);
[[nodiscard]] QString panelFigures(const Panel& panel, LengthUnit unit);

// Area of a panel in the square of the maker's unit: "212.4 cm²", "32.9 sq in".
[[nodiscard]] QString areaText(const Panel& panel, LengthUnit unit);

// Where a problem is on the scene of this pattern.
[[nodiscard]] ProblemSpot spotOf(const Problem& problem, const Pattern& pattern);

}  // namespace coutil
