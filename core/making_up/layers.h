#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/block/style.h"
#include "core/pattern/pattern.h"
#include "core/problems/problem.h"

namespace coutil {

// Cloth added along one edge of a panel, beyond its allowance: a strip of the outer fabric folded
// round the laced edge, say.
struct LayerAddition {
    std::string panel;  // its name, on both sides
    std::string edge;
    double widthMm = 0;

    bool operator==(const LayerAddition&) const = default;
};

// One layer of the garment.
struct MakingUpLayer {
    std::string key;  // "strength", "outer", "lining", "mock_up", or the maker's own name
    bool isCut = true;
    std::vector<std::string> panels{};  // by name; empty: all
    // Every edge gets this much; absent: the allowances of the style.
    std::optional<double> allowanceMm{};
    std::vector<LayerAddition> additions{};

    bool operator==(const MakingUpLayer&) const = default;
};

// Strength layer and mock-up are cut, outer fabric and lining at wish. The mock-up has 20 mm round
// every edge (common practice: 20 to 25).
[[nodiscard]] std::vector<MakingUpLayer> usualLayers();

// What a layer is cut from: panels by their index in the pattern, and the allowances for them.
struct LayerCut {
    std::string key;
    std::vector<std::size_t> panels{};
    AllowanceStyle allowance{};

    bool operator==(const LayerCut&) const = default;
};

// What to cut for a layer. Additions come on top of the allowance their edge has. Problems:
// layerPanelUnknown (warning; detail: the panel, or panel and edge; it is left out),
// makingUpOutOfRange ("layers/KEY/...").
[[nodiscard]] Outcome<LayerCut> layerCut(const Pattern& pattern, const AllowanceStyle& allowance,
                                         const MakingUpLayer& layer);

}  // namespace coutil
