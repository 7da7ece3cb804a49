#include "core/alterations/whole_pattern.h"

#include <algorithm>

#include "core/alterations/find_places.h"
#include "core/alterations/mean_edge.h"
#include "core/alterations/settle.h"
#include "core/pattern/level_lines.h"

namespace coutil {
namespace {

constexpr const char* kCentreFront = "centre front";

// The edges at centre front that a whole pattern sews together: a fold, or a seam there.
std::optional<EdgeRef> sewnCentreFront(const Pattern& pattern) {
    for (const EdgeRef& ref : edgesNamed(pattern, kCentreFront, BodySide::both)) {
        const EdgeRole role = edgeAt(pattern, ref).role;
        if (role == EdgeRole::fold || role == EdgeRole::seam) return ref;
    }
    return std::nullopt;
}

bool joinsSides(const Pattern& pattern, const Seam& seam) {
    return pattern.panels[seam.front.panel].side != pattern.panels[seam.back.panel].side;
}

// One side of a whole pattern as a half, taken as it is.
Pattern halfOf(const Pattern& pattern, PanelSide side) {
    Pattern half = pattern;
    half.panels.clear();
    half.seams.clear();
    std::vector<std::size_t> indices(pattern.panels.size());
    for (std::size_t p = 0; p < pattern.panels.size(); ++p) {
        if (pattern.panels[p].side != side) continue;
        indices[p] = half.panels.size();
        Panel& panel = half.panels.emplace_back(pattern.panels[p]);
        panel.side = PanelSide::both;
        if (!panel.isOnFold) continue;
        if (const auto edge = edgeNamed(panel, kCentreFront))
            panel.edges[*edge].role = EdgeRole::fold;
    }
    for (const Seam& seam : pattern.seams) {
        if (joinsSides(pattern, seam) || pattern.panels[seam.front.panel].side != side) continue;
        Seam& own = half.seams.emplace_back(seam);
        own.front.panel = indices[seam.front.panel];
        own.back.panel = indices[seam.back.panel];
    }
    return half;
}

bool hasSameEdges(const Panel& a, const Panel& b) {
    return a.name == b.name &&
           std::ranges::equal(a.edges, b.edges, [](const Edge& one, const Edge& other) {
               return one.name == other.name && one.role == other.role &&
                      one.runsUp == other.runsUp &&
                      one.waistMarkAtMm.has_value() == other.waistMarkAtMm.has_value();
           });
}

bool isComparable(const Pattern& left, const Pattern& right) {
    return std::ranges::equal(left.panels, right.panels, hasSameEdges) && left.seams == right.seams;
}

SeamLengths meanOf(const SeamLengths& a, const SeamLengths& b) {
    return {(a.aboveWaistMm + b.aboveWaistMm) / 2, (a.belowWaistMm + b.belowWaistMm) / 2};
}

Pattern meanOf(const Pattern& left, const Pattern& right) {
    Pattern mean = left;
    std::vector<WantedLengths> wanted;
    for (std::size_t p = 0; p < mean.panels.size(); ++p) {
        for (std::size_t e = 0; e < mean.panels[p].edges.size(); ++e) {
            const Edge& one = left.panels[p].edges[e];
            const Edge& other = right.panels[p].edges[e];
            if (one == other) continue;
            mean.panels[p].edges[e].path = meanPath(one.path, other.path);
            if (one.waistMarkAtMm)
                wanted.push_back({{p, e}, meanOf(seamLengthsOf(one), seamLengthsOf(other))});
        }
    }
    settleMean(left, mean, wanted);
    return mean;
}

}  // namespace

bool isWhole(const Pattern& pattern) {
    return std::ranges::any_of(pattern.panels,
                               [](const Panel& panel) { return panel.side != PanelSide::both; });
}

Pattern wholeOf(const Pattern& pattern) {
    if (isWhole(pattern)) return pattern;
    const std::size_t count = pattern.panels.size();
    Pattern whole = pattern;
    const auto centre = sewnCentreFront(pattern);
    if (centre) whole.panels[centre->panel].edges[centre->edge].role = EdgeRole::seam;
    whole.panels.reserve(2 * count);
    for (std::size_t p = 0; p < count; ++p) whole.panels.push_back(whole.panels[p]);
    for (std::size_t p = 0; p < 2 * count; ++p)
        whole.panels[p].side = p < count ? PanelSide::left : PanelSide::right;
    for (Seam seam : pattern.seams) {
        seam.front.panel += count;
        seam.back.panel += count;
        whole.seams.push_back(seam);
    }
    if (centre) {
        whole.seams.push_back({.name = kCentreFront,
                               .front = *centre,
                               .back = {centre->panel + count, centre->edge}});
    }
    return whole;
}

std::optional<Pattern> symmetricOf(const Pattern& pattern, SymmetrySource source) {
    if (!isWhole(pattern)) return pattern;
    Pattern left = halfOf(pattern, PanelSide::left);
    Pattern right = halfOf(pattern, PanelSide::right);
    if (!isComparable(left, right)) return std::nullopt;
    Pattern half = source == SymmetrySource::mean   ? meanOf(left, right)
                   : source == SymmetrySource::left ? std::move(left)
                                                    : std::move(right);
    measureGirths(half.panels, half.levels);
    return half;
}

}  // namespace coutil
