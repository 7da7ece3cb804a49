#pragma once

#include <cstddef>
#include <optional>
#include <string_view>
#include <vector>

#include "core/alterations/alteration.h"
#include "core/pattern/pattern.h"

namespace coutil {

// Whether what is said of a side concerns a panel. A panel of a half stands for both sides.
[[nodiscard]] bool concerns(BodySide side, PanelSide panel);

// Indices into the pattern's panels or seams of one name on a side: one on a half, up to two on a
// whole pattern, none where the name is not there.
[[nodiscard]] std::vector<std::size_t> panelsNamed(const Pattern& pattern, std::string_view name,
                                                   BodySide side);
[[nodiscard]] std::vector<std::size_t> seamsNamed(const Pattern& pattern, std::string_view name,
                                                  BodySide side);

// The edges of one name on a side ("centre front", "seam 1-2", "top"), in panel order.
[[nodiscard]] std::vector<EdgeRef> edgesNamed(const Pattern& pattern, std::string_view edge,
                                              BodySide side);

// "centre front" or "centre back".
[[nodiscard]] bool isCentreName(std::string_view name);

// The edge of a panel with this name, or with this role.
[[nodiscard]] std::optional<std::size_t> edgeNamed(const Panel& panel, std::string_view edge);
[[nodiscard]] std::optional<std::size_t> edgeWithRole(const Panel& panel, EdgeRole role);

// The long edges of a panel: `front` runs down along its path, `back` up.
struct LongEdgeIndices {
    std::size_t front = 0;
    std::size_t back = 0;
};
[[nodiscard]] std::optional<LongEdgeIndices> longEdgesOf(const Panel& panel);

// The seam an edge belongs to, if any.
[[nodiscard]] const Seam* seamOf(const Pattern& pattern, const EdgeRef& edge);

}  // namespace coutil
