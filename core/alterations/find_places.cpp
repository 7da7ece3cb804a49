#include "core/alterations/find_places.h"

#include <algorithm>

namespace coutil {
namespace {

template <class Test>
std::optional<std::size_t> edgeWhere(const Panel& panel, Test test) {
    const auto found = std::ranges::find_if(panel.edges, test);
    if (found == panel.edges.end()) return std::nullopt;
    return static_cast<std::size_t>(found - panel.edges.begin());
}

bool isLong(const Edge& edge) {
    return edge.role != EdgeRole::top && edge.role != EdgeRole::bottom;
}

}  // namespace

bool concerns(BodySide side, PanelSide panel) {
    if (side == BodySide::both || panel == PanelSide::both) return true;
    return (side == BodySide::left) == (panel == PanelSide::left);
}

std::vector<std::size_t> panelsNamed(const Pattern& pattern, std::string_view name, BodySide side) {
    std::vector<std::size_t> found;
    for (std::size_t p = 0; p < pattern.panels.size(); ++p) {
        const Panel& panel = pattern.panels[p];
        if (panel.name == name && concerns(side, panel.side)) found.push_back(p);
    }
    return found;
}

std::vector<std::size_t> seamsNamed(const Pattern& pattern, std::string_view name, BodySide side) {
    std::vector<std::size_t> found;
    for (std::size_t s = 0; s < pattern.seams.size(); ++s) {
        const Seam& seam = pattern.seams[s];
        if (seam.name == name && concerns(side, pattern.panels[seam.front.panel].side))
            found.push_back(s);
    }
    return found;
}

std::vector<EdgeRef> edgesNamed(const Pattern& pattern, std::string_view edge, BodySide side) {
    std::vector<EdgeRef> found;
    for (std::size_t p = 0; p < pattern.panels.size(); ++p) {
        if (!concerns(side, pattern.panels[p].side)) continue;
        for (std::size_t e = 0; e < pattern.panels[p].edges.size(); ++e) {
            if (pattern.panels[p].edges[e].name == edge) found.push_back({p, e});
        }
    }
    return found;
}

bool isCentreName(std::string_view name) { return name == "centre front" || name == "centre back"; }

std::optional<std::size_t> edgeNamed(const Panel& panel, std::string_view edge) {
    return edgeWhere(panel, [&](const Edge& each) { return each.name == edge; });
}

std::optional<std::size_t> edgeWithRole(const Panel& panel, EdgeRole role) {
    return edgeWhere(panel, [&](const Edge& each) { return each.role == role; });
}

std::optional<LongEdgeIndices> longEdgesOf(const Panel& panel) {
    const auto front = edgeWhere(panel, [](const Edge& e) { return isLong(e) && !e.runsUp; });
    const auto back = edgeWhere(panel, [](const Edge& e) { return isLong(e) && e.runsUp; });
    if (!front || !back) return std::nullopt;
    return LongEdgeIndices{*front, *back};
}

const Seam* seamOf(const Pattern& pattern, const EdgeRef& edge) {
    const auto found = std::ranges::find_if(
        pattern.seams, [&](const Seam& seam) { return seam.front == edge || seam.back == edge; });
    return found == pattern.seams.end() ? nullptr : &*found;
}

}  // namespace coutil
