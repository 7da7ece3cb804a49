#include "core/block/corset_panels.h"

#include <string>
#include <utility>

#include "core/block/edge_curve.h"

namespace coutil {
namespace {

EdgeRole frontRole(FrontClosure closure) {
    switch (closure) {
        case FrontClosure::busk:
            return EdgeRole::opening;
        case FrontClosure::fold:
            return EdgeRole::fold;
        case FrontClosure::seam:
            return EdgeRole::seam;
    }
    return EdgeRole::opening;
}

// The long edges of one panel, cut to length, both running upwards.
struct LongEdges {
    Path front;
    Path back;
};

LongEdges longEdges(const CorsetFrame& frame, const ResolvedHeights& heights, std::size_t panel) {
    const auto cut = [&](const std::vector<SeamEdge>& edges, std::size_t seam) {
        return trimmed(edges[seam], -heights.bottomMm[seam + 1], heights.topMm[seam + 1]);
    };
    const auto centre = [&](double xMm, std::size_t end) {
        return straightPath({xMm, -heights.bottomMm[end]}, {xMm, heights.topMm[end]});
    };
    const bool isFirst = panel == 0;
    const bool isLast = panel + 1 == frame.panelCount();
    return {isFirst ? centre(0, 0) : cut(frame.backEdges, panel - 1),
            isLast ? centre(frame.widths.widthMm[panel], panel + 1) : cut(frame.frontEdges, panel)};
}

PanelCorners cornersAtTop(const LongEdges& edges) {
    const auto up = [](const Path& path) { return tangentAt(path.pieces.back(), 1); };
    return {edges.front.end(), edges.back.end(), up(edges.front), up(edges.back)};
}

PanelCorners cornersAtBottom(const LongEdges& edges) {
    const auto up = [](const Path& path) { return tangentAt(path.pieces.front(), 0); };
    return {edges.front.start(), edges.back.start(), up(edges.front), up(edges.back)};
}

struct Lines {
    std::vector<Path> bottom;
    std::vector<Path> top;
};

Lines linesOf(const std::vector<LongEdges>& edges, const Style& style) {
    std::vector<PanelCorners> bottoms;
    std::vector<PanelCorners> tops;
    for (const LongEdges& each : edges) {
        bottoms.push_back(cornersAtBottom(each));
        tops.push_back(cornersAtTop(each));
    }
    const auto meeting = [](bool isPointed) {
        return isPointed ? LineMeeting::pointed : LineMeeting::square;
    };
    return {
        edgeCurves(bottoms, meeting(style.bottomEdge.shape == BottomShape::pointed),
                   LineMeeting::square),
        edgeCurves(tops, meeting(style.topEdge.shape == TopShape::pointed), LineMeeting::square)};
}

Edge longEdge(std::string name, EdgeRole role, Path upwards, const ResolvedHeights& heights,
              std::size_t end, bool runsUp) {
    return {.name = std::move(name),
            .role = role,
            .path = runsUp ? std::move(upwards) : reversed(upwards),
            .waistMarkAtMm = runsUp ? heights.bottomMm[end] : heights.topMm[end],
            .runsUp = runsUp};
}

}  // namespace

std::vector<Panel> corsetPanels(const CorsetFrame& frame, const ResolvedHeights& heights,
                                const Style& style) {
    const std::size_t count = frame.panelCount();
    std::vector<LongEdges> edges;
    for (std::size_t p = 0; p < count; ++p) edges.push_back(longEdges(frame, heights, p));
    Lines lines = linesOf(edges, style);
    const auto nameOf = [&](std::size_t end) {
        if (end == 0) return std::string("centre front");
        return end == count ? std::string("centre back") : "seam " + seamName(end - 1);
    };
    const auto roleOf = [&](std::size_t end) {
        if (end == 0) return frontRole(style.front);
        return end == count ? EdgeRole::opening : EdgeRole::seam;
    };
    std::vector<Panel> panels;
    for (std::size_t p = 0; p < count; ++p) {
        Panel panel{.name = std::to_string(p + 1),
                    .isOnFold = p == 0 && style.front == FrontClosure::fold};
        panel.edges = {
            {.name = "bottom", .role = EdgeRole::bottom, .path = std::move(lines.bottom[p])},
            longEdge(nameOf(p + 1), roleOf(p + 1), std::move(edges[p].back), heights, p + 1, true),
            {.name = "top", .role = EdgeRole::top, .path = reversed(lines.top[p])},
            longEdge(nameOf(p), roleOf(p), std::move(edges[p].front), heights, p, false)};
        panel.grain = grainLine(frame, heights, p);
        panels.push_back(std::move(panel));
    }
    return panels;
}

}  // namespace coutil
