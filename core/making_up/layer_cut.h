#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/block/style.h"
#include "core/making_up/layer.h"
#include "core/pattern/pattern.h"
#include "core/problems/problem.h"

namespace coutil {

// What a layer is cut from: panels by their index in the pattern, and the allowances for them.
struct LayerCut {
    std::string key;
    std::vector<std::size_t> panels{};
    AllowanceStyle allowance{};

    bool operator==(const LayerCut&) const = default;
};

// What to cut for a layer. One width for its sewn edges replaces the style's widths, those of
// single edges too; top and bottom edges get it where they are not bound. Additions come on top of
// the allowance their edge has. Problems:
// layerPanelUnknown (warning; detail: the panel, or panel and edge; it is left out),
// makingUpOutOfRange ("layers/KEY/...").
[[nodiscard]] Outcome<LayerCut> layerCut(const Pattern& pattern, const AllowanceStyle& allowance,
                                         const Layer& layer);

}  // namespace coutil
