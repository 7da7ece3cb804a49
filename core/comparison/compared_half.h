#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/comparison/comparison.h"

// What of a pattern is compared with what.
namespace coutil::comparison {

// All of a pattern, or (left, right) one side of it as if the other were the same.
struct Compared {
    const Pattern& pattern;
    PanelSide side = PanelSide::both;
};

[[nodiscard]] bool takesPart(const Compared& compared, const Panel& panel);

// How often a panel's width counts in the girth.
[[nodiscard]] int timesInGirth(const Compared& compared, const Panel& panel);

// The sides that have figures of their own: both in one, or left and right as soon as one of them
// has panels of one side.
[[nodiscard]] std::vector<PanelSide> sidesApart(const Compared& a, const Compared& b);

// The panel that stands for a name on a side; nothing where there is none.
[[nodiscard]] std::optional<std::size_t> panelOf(const Compared& compared, const std::string& name,
                                                 PanelSide side);

// Pairs of panels, front to back, one side after the other: those of a, and those only in b behind
// the one they follow there.
[[nodiscard]] std::vector<PanelComparison> pairedPanels(const Compared& a, const Compared& b);

// A long edge of a seam or closure: the panel in front has it at its back.
struct LongEdge {
    std::size_t panel = 0;
    std::size_t edge = 0;
};

// A seam or closure with the edges that it has. Closures: edges that no seam joins.
struct SeamEdges {
    std::string name{};
    PanelSide side = PanelSide::both;
    std::optional<LongEdge> inFront{};
    std::optional<LongEdge> behind{};
};

// All seams and closures of one side, front to back.
[[nodiscard]] std::vector<SeamEdges> seamsOn(const Compared& compared, PanelSide side);

}  // namespace coutil::comparison
