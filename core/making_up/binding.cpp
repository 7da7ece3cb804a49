#include "core/making_up/binding.h"

#include <map>
#include <utility>

#include "core/making_up/choice_range.h"
#include "core/making_up/opening_edges.h"

namespace coutil {
namespace {

std::map<PanelSide, double> lineLengthsMm(const Pattern& pattern, EdgeRole line) {
    std::map<PanelSide, double> lengthsMm;
    for (const Panel& panel : pattern.panels) {
        for (const Edge& edge : panel.edges) {
            if (edge.role == line) lengthsMm[panel.side] += lengthMm(edge.path);
        }
    }
    return lengthsMm;
}

void addStrips(const Pattern& pattern, EdgeRole line, const BindingChoices& choices,
               Binding& binding) {
    const bool isFrontOpen = frontOpening(pattern).has_value();
    BindingStrip through{.line = line};
    for (const auto& [side, mm] : lineLengthsMm(pattern, line)) {
        const int sides = side == PanelSide::both ? 2 : 1;
        through.lineMm += sides * mm;
        if (isFrontOpen)
            binding.strips.push_back({line, side, mm, mm + 2 * choices.turningMm, sides});
    }
    if (isFrontOpen || through.lineMm <= 0) return;
    through.cutMm = through.lineMm + 2 * choices.turningMm;
    binding.strips.push_back(through);
}

}  // namespace

double bindingCutWidthMm(double finishedMm) { return 4 * finishedMm + 3; }

Outcome<Binding> bindingFor(const Pattern& pattern, const AllowanceStyle& allowance,
                            const BindingChoices& choices) {
    std::vector<Problem> problems;
    requireWithin("binding/finished", choices.finishedMm, 1, 100, problems);
    requireWithin("binding/turning", choices.turningMm, 0, 200, problems);
    if (!problems.empty()) return Outcome<Binding>::failed(std::move(problems));
    Binding binding{.cutWidthMm = bindingCutWidthMm(choices.finishedMm)};
    if (allowance.isTopBound) addStrips(pattern, EdgeRole::top, choices, binding);
    if (allowance.isBottomBound) addStrips(pattern, EdgeRole::bottom, choices, binding);
    for (const BindingStrip& strip : binding.strips) binding.totalMm += strip.count * strip.cutMm;
    return binding;
}

}  // namespace coutil
