#include "core/making_up/opening_edges.h"

#include <algorithm>

namespace coutil {
namespace {

std::optional<EdgeRef> openingOf(const Pattern& pattern, PanelSide side, bool isBack) {
    for (std::size_t p = 0; p < pattern.panels.size(); ++p) {
        const Panel& panel = pattern.panels[p];
        if (panel.side != side) continue;
        for (std::size_t e = 0; e < panel.edges.size(); ++e) {
            const Edge& edge = panel.edges[e];
            if (edge.role == EdgeRole::opening && edge.runsUp == isBack && edge.waistMarkAtMm)
                return EdgeRef{p, e};
        }
    }
    return std::nullopt;
}

std::optional<OpeningEdges> openingsOf(const Pattern& pattern, bool isBack) {
    if (const auto both = openingOf(pattern, PanelSide::both, isBack))
        return OpeningEdges{*both, *both};
    const auto left = openingOf(pattern, PanelSide::left, isBack);
    const auto right = openingOf(pattern, PanelSide::right, isBack);
    if (!left || !right) return std::nullopt;
    return OpeningEdges{*left, *right};
}

}  // namespace

std::optional<OpeningEdges> backOpening(const Pattern& pattern) {
    return openingsOf(pattern, true);
}

std::optional<OpeningEdges> frontOpening(const Pattern& pattern) {
    return openingsOf(pattern, false);
}

SharedStretch sharedStretchOf(const Pattern& pattern, const OpeningEdges& edges) {
    const SeamLengths left = seamLengthsOf(edgeAt(pattern, edges.left));
    const SeamLengths right = seamLengthsOf(edgeAt(pattern, edges.right));
    SharedStretch shared;
    shared.topMm = std::min(left.aboveWaistMm, right.aboveWaistMm);
    shared.bottomMm = -std::min(left.belowWaistMm, right.belowWaistMm);
    shared.longerAboveMm = std::max(left.aboveWaistMm, right.aboveWaistMm) - shared.topMm;
    shared.longerBelowMm = std::max(left.belowWaistMm, right.belowWaistMm) + shared.bottomMm;
    return shared;
}

std::optional<Point> pointBesideEdge(const Edge& edge, double positionMm, double inwardMm) {
    const auto onEdge = pointAtSeamPosition(edge, positionMm);
    if (!onEdge) return std::nullopt;
    const double fromStartMm = *edge.waistMarkAtMm + (edge.runsUp ? positionMm : -positionMm);
    const Vector along = tangentAt(edge.path, positionAtLength(edge.path, fromStartMm));
    // Outlines run counter-clockwise: the panel lies on the left of its edges.
    return Point(*onEdge + inwardMm * Vector(-along.y(), along.x()));
}

}  // namespace coutil
