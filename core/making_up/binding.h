#pragma once

#include <vector>

#include "core/block/style.h"
#include "core/making_up/tape_choices.h"
#include "core/pattern/pattern.h"
#include "core/problems/problem.h"

namespace coutil {

// One strip of binding and the line it is sewn to.
struct BindingStrip {
    EdgeRole line = EdgeRole::top;  // top or bottom
    // left or right where these differ; both: one for each side, or one round both (count 1).
    PanelSide side = PanelSide::both;
    double lineMm = 0;
    double cutMm = 0;  // with its turnings
    int count = 1;

    bool operator==(const BindingStrip&) const = default;
};

struct Binding {
    double cutWidthMm = 0;
    std::vector<BindingStrip> strips{};  // top lines first; none where nothing is bound
    double totalMm = 0;                  // of all strips, cut

    bool operator==(const Binding&) const = default;
};

// 4 x finished + 3 (common practice).
[[nodiscard]] double bindingCutWidthMm(double finishedMm);

// Binding for the lines that the style binds, as long as the panels' edges along them: a strip for
// each side where the front opens, else one from back edge to back edge. Problems:
// makingUpOutOfRange ("binding/...").
[[nodiscard]] Outcome<Binding> bindingFor(const Pattern& pattern, const AllowanceStyle& allowance,
                                          const BindingChoices& choices);

}  // namespace coutil
