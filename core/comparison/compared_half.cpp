#include "core/comparison/compared_half.h"

#include <algorithm>

namespace coutil::comparison {
namespace {

bool isOn(const Compared& compared, const Panel& panel, PanelSide side) {
    if (compared.side != PanelSide::both) return takesPart(compared, panel);
    return panel.side == PanelSide::both || side == PanelSide::both || panel.side == side;
}

bool isLong(const Edge& edge) {
    return edge.role != EdgeRole::top && edge.role != EdgeRole::bottom;
}

void pairSide(const Compared& a, const Compared& b, PanelSide side,
              std::vector<PanelComparison>& pairs) {
    const auto first = static_cast<std::ptrdiff_t>(pairs.size());
    for (std::size_t i = 0; i < a.pattern.panels.size(); ++i) {
        const Panel& panel = a.pattern.panels[i];
        if (!isOn(a, panel, side)) continue;
        pairs.push_back(
            {.name = panel.name, .side = side, .inA = i, .inB = panelOf(b, panel.name, side)});
    }
    auto behind = pairs.begin() + first;
    for (std::size_t i = 0; i < b.pattern.panels.size(); ++i) {
        const Panel& panel = b.pattern.panels[i];
        if (!isOn(b, panel, side)) continue;
        const auto known = std::find_if(pairs.begin() + first, pairs.end(),
                                        [&](const PanelComparison& p) { return p.inB == i; });
        behind = known != pairs.end()
                     ? known + 1
                     : pairs.insert(behind, {.name = panel.name, .side = side, .inB = i}) + 1;
    }
}

// The seam that a long edge belongs to, by which of its two edges it is.
struct Sewn {
    const Seam* seam = nullptr;
    bool isInFront = false;
};

Sewn sewnAt(const Pattern& pattern, const EdgeRef& ref) {
    for (const Seam& seam : pattern.seams) {
        if (seam.front == ref) return {&seam, true};
        if (seam.back == ref) return {&seam, false};
    }
    return {};
}

void addEdge(const Pattern& pattern, const LongEdge& at, PanelSide side,
             std::vector<SeamEdges>& seams) {
    const Edge& edge = pattern.panels[at.panel].edges[at.edge];
    const Sewn sewn = sewnAt(pattern, {at.panel, at.edge});
    const std::string& name = sewn.seam != nullptr ? sewn.seam->name : edge.name;
    auto place = std::ranges::find(seams, name, &SeamEdges::name);
    if (place == seams.end()) {
        seams.push_back({.name = name, .side = side});
        place = seams.end() - 1;
    }
    const bool isInFront = sewn.seam != nullptr ? sewn.isInFront : edge.runsUp;
    (isInFront ? place->inFront : place->behind) = at;
}

}  // namespace

bool takesPart(const Compared& compared, const Panel& panel) {
    return compared.side == PanelSide::both || panel.side == PanelSide::both ||
           panel.side == compared.side;
}

int timesInGirth(const Compared& compared, const Panel& panel) {
    return compared.side != PanelSide::both || panel.side == PanelSide::both ? 2 : 1;
}

std::vector<PanelSide> sidesApart(const Compared& a, const Compared& b) {
    const auto isHalf = [](const Compared& compared) {
        return compared.side != PanelSide::both ||
               std::ranges::all_of(compared.pattern.panels, [](const Panel& panel) {
                   return panel.side == PanelSide::both;
               });
    };
    if (isHalf(a) && isHalf(b)) return {PanelSide::both};
    return {PanelSide::left, PanelSide::right};
}

std::optional<std::size_t> panelOf(const Compared& compared, const std::string& name,
                                   PanelSide side) {
    const auto& panels = compared.pattern.panels;
    for (std::size_t i = 0; i < panels.size(); ++i)
        if (panels[i].name == name && isOn(compared, panels[i], side)) return i;
    return std::nullopt;
}

std::vector<PanelComparison> pairedPanels(const Compared& a, const Compared& b) {
    std::vector<PanelComparison> pairs;
    for (const PanelSide side : sidesApart(a, b)) pairSide(a, b, side, pairs);
    return pairs;
}

std::vector<SeamEdges> seamsOn(const Compared& compared, PanelSide side) {
    std::vector<SeamEdges> seams;
    for (std::size_t p = 0; p < compared.pattern.panels.size(); ++p) {
        const Panel& panel = compared.pattern.panels[p];
        if (!isOn(compared, panel, side)) continue;
        // Front edge first, so that seams come in the order front to back.
        for (const bool isBackEdge : {false, true}) {
            for (std::size_t e = 0; e < panel.edges.size(); ++e) {
                if (isLong(panel.edges[e]) && panel.edges[e].runsUp == isBackEdge)
                    addEdge(compared.pattern, {p, e}, side, seams);
            }
        }
    }
    return seams;
}

}  // namespace coutil::comparison
