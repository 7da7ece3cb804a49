#pragma once

#include <optional>
#include <string>
#include <vector>

namespace coutil {

// A strip of this layer's cloth added along an edge, beside the allowance.
struct LayerAddition {
    std::string panel;
    std::string edge;
    double widthMm = 0;
    bool operator==(const LayerAddition&) const = default;
};

// One layer of cloth: which panels are cut in it, and with what allowances.
struct Layer {
    std::string key;                    // "strength", "outer", "lining", "mock_up", or her own
    bool isMade = true;                 // counted in the materials
    std::vector<std::string> panels{};  // names; empty: all
    std::optional<double> seamAllowanceMm{};  // one width for all sewn edges; else the style's
    bool areEdgesBound = true;                // top and bottom get nothing where bound
    std::vector<LayerAddition> additions{};
    double clothWidthMm = 1500;
    bool operator==(const Layer&) const = default;
};

// Strength layer, outer fabric, lining; and a mock-up with 20 mm (common practice 20 to 25).
[[nodiscard]] std::vector<Layer> usualLayers();

}  // namespace coutil
