#pragma once

#include <optional>
#include <vector>

#include "core/alterations/alteration.h"
#include "core/pattern/pattern.h"
#include "ui/canvas/table_scene.h"

namespace coutil {

// The names of the handles where the change of a top or bottom edge ends.
inline constexpr char kFadeFrontHandle[] = "fade front";
inline constexpr char kFadeBackHandle[] = "fade back";

// Handles where the change of a line ends towards front and back, on the first side it concerns of
// a pattern laid out by `placements`. One carried to the centre has none.
[[nodiscard]] std::vector<SceneHandle> lineFadeHandles(const Pattern& pattern,
                                                       const ReshapeEdge& change, BodySide side,
                                                       const std::vector<Placement>& placements);

// The change with its fade as long as a handle wanted at `mm` says, to the millimetre; nothing
// where `handle` is no handle of it.
[[nodiscard]] std::optional<ReshapeEdge> lineFadeDragged(const Pattern& pattern,
                                                         const ReshapeEdge& change, BodySide side,
                                                         const std::vector<Placement>& placements,
                                                         const std::string& handle,
                                                         const QPointF& mm);

}  // namespace coutil
