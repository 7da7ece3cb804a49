#include "core/making_up/layer_cut.h"

#include <algorithm>
#include <utility>

#include "core/block/edge_allowance.h"
#include "core/making_up/choice_range.h"

namespace coutil {
namespace {

constexpr double kWidestMm = 500;

AllowanceStyle allowanceOf(const AllowanceStyle& style, const Layer& layer) {
    AllowanceStyle own = style;
    if (layer.seamAllowanceMm) {
        own.byEdgeMm.clear();
        own.seamMm = *layer.seamAllowanceMm;
        own.openingMm = *layer.seamAllowanceMm;
        own.edgeMm = *layer.seamAllowanceMm;
    }
    if (!layer.areEdgesBound) {
        own.isTopBound = false;
        own.isBottomBound = false;
    }
    return own;
}

Problem unknown(const Layer& layer, std::string what) {
    return {.code = ProblemCode::layerPanelUnknown,
            .severity = Severity::warning,
            .subject = layer.key,
            .detail = std::move(what)};
}

std::vector<Problem> checkLayer(const Layer& layer) {
    std::vector<Problem> problems;
    const std::string path = "layers/" + layer.key;
    if (layer.seamAllowanceMm)
        requireWithin(path + "/seam_allowance", *layer.seamAllowanceMm, 0, kWidestMm, problems);
    for (const LayerAddition& addition : layer.additions) {
        requireWithin(path + "/" + addition.panel + "/" + addition.edge, addition.widthMm, 0,
                      kWidestMm, problems);
    }
    return problems;
}

void choosePanels(const Pattern& pattern, const Layer& layer, LayerCut& cut,
                  std::vector<Problem>& problems) {
    for (std::size_t p = 0; p < pattern.panels.size(); ++p) {
        const bool isAsked =
            layer.panels.empty() || std::ranges::count(layer.panels, pattern.panels[p].name) > 0;
        if (isAsked) cut.panels.push_back(p);
    }
    for (const std::string& name : layer.panels) {
        if (std::ranges::find(pattern.panels, name, &Panel::name) == pattern.panels.end())
            problems.push_back(unknown(layer, name));
    }
}

void widen(const Pattern& pattern, const Layer& layer, const LayerAddition& addition, LayerCut& cut,
           std::vector<Problem>& problems) {
    for (const Panel& panel : pattern.panels) {
        if (panel.name != addition.panel) continue;
        for (const Edge& edge : panel.edges) {
            if (edge.name != addition.edge) continue;
            // The name stands for both sides: widened once.
            const double widthMm = allowanceMm(cut.allowance, panel, edge) + addition.widthMm;
            cut.allowance.byEdgeMm[panel.name + "/" + edge.name] = widthMm;
            return;
        }
    }
    problems.push_back(unknown(layer, addition.panel + "/" + addition.edge));
}

}  // namespace

Outcome<LayerCut> layerCut(const Pattern& pattern, const AllowanceStyle& allowance,
                           const Layer& layer) {
    auto problems = checkLayer(layer);
    if (!problems.empty()) return Outcome<LayerCut>::failed(std::move(problems));
    LayerCut cut{.key = layer.key};
    cut.allowance = allowanceOf(allowance, layer);
    choosePanels(pattern, layer, cut, problems);
    for (const LayerAddition& addition : layer.additions)
        widen(pattern, layer, addition, cut, problems);
    return {std::move(cut), std::move(problems)};
}

}  // namespace coutil
