#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/geometry/point.h"
#include "core/pattern/pattern.h"

namespace coutil {

enum class NotchShape { slit, vee, tick };
[[nodiscard]] std::string_view keyOf(NotchShape shape);  // "slit", "vee", "tick"

enum class LinesShown { sewing, cutting, both };
[[nodiscard]] std::string_view keyOf(LinesShown lines);  // "sewing", "cutting", "both"

// What the maker decides by hand about one tracing; whatever is left out is worked out.
struct TracingByHand {
    std::string panel;
    PanelSide side = PanelSide::both;
    std::optional<double> turnDeg{};       // the whole tracing on its paper, counter-clockwise
    std::optional<Point> labelAt{};        // centre of the label, in the panel's frame
    std::optional<double> labelTurnDeg{};  // counter-clockwise
    std::optional<double> labelScale{};    // 1: as large as it would be
    bool operator==(const TracingByHand&) const = default;
};

// How a garment's tracings are drawn. Not ink.
struct TracingChoices {
    std::string layer{};  // key of the layer; empty: the pattern with the style's allowances
    NotchShape notchShape = NotchShape::slit;
    LinesShown lines = LinesShown::both;
    std::vector<TracingByHand> byHand{};
    bool operator==(const TracingChoices&) const = default;
};

}  // namespace coutil
