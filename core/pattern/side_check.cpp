#include <algorithm>
#include <optional>

#include "core/geometry/largest_distance.h"
#include "core/geometry/tolerances.h"
#include "core/pattern/every_check.h"
#include "core/pattern/panel_key.h"

namespace coutil {
namespace {

const Panel* panelOn(const Pattern& pattern, PanelSide side, const std::string& name) {
    const auto found = std::ranges::find_if(pattern.panels, [&](const Panel& panel) {
        return panel.side == side && panel.name == name;
    });
    return found == pattern.panels.end() ? nullptr : &*found;
}

Problem noteOf(const Panel& panel, std::string subject) {
    return {.code = ProblemCode::sidesDiffer,
            .severity = Severity::note,
            .subject = std::move(subject),
            .panel = panelKey(panel)};
}

// Where the edges of a pair of panels are farthest apart, if it is more than `atLeastMm`.
std::optional<Problem> differenceOf(const Panel& left, const Panel& right, double& atLeastMm) {
    std::optional<Problem> worst;
    for (const Edge& edge : left.edges) {
        const auto other = std::ranges::find(right.edges, edge.name, &Edge::name);
        if (other == right.edges.end() || edge.path.isEmpty() || other->path.isEmpty()) continue;
        const LargestDistance largest = largestDistance(edge.path, other->path);
        if (largest.distanceMm <= atLeastMm) continue;
        atLeastMm = largest.distanceMm;
        worst = noteOf(left, edge.name);
        worst->at = pointAt(edge.path, largest.onFirst);
        worst->figures = {{"value", largest.distanceMm}};
    }
    return worst;
}

}  // namespace

std::vector<Problem> checkSides(const Pattern& pattern) {
    std::vector<Problem> problems;
    std::optional<Problem> worst;
    double worstMm = tolerance::kSidesAlikeMm;
    for (const Panel& panel : pattern.panels) {
        if (panel.side == PanelSide::both) continue;
        const bool isLeft = panel.side == PanelSide::left;
        const Panel* other =
            panelOn(pattern, isLeft ? PanelSide::right : PanelSide::left, panel.name);
        if (other == nullptr) {
            problems.push_back(noteOf(panel, panel.name));
        } else if (isLeft) {
            if (auto found = differenceOf(panel, *other, worstMm)) worst = std::move(found);
        }
    }
    if (worst) problems.insert(problems.begin(), *std::move(worst));
    return problems;
}

}  // namespace coutil
