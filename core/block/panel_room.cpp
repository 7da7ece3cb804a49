#include <algorithm>
#include <cmath>
#include <string>

#include "core/block/corset_panels.h"
#include "core/geometry/tolerances.h"
#include "core/pattern/grain_line.h"

// What fits into a panel between its two long edges: its grain line, and whether it is wide enough.
namespace coutil {
namespace {

struct HeightRange {
    double lowestMm = 0;
    double highestMm = 0;
};

double cornerHeightMm(const CorsetFrame& frame, std::size_t panel, bool isFront, double position) {
    const bool isCentre = isFront ? panel == 0 : panel + 1 == frame.panelCount();
    if (isCentre) return position;
    const SeamEdge& edge = isFront ? frame.backEdges[panel - 1] : frame.frontEdges[panel];
    return pointAt(edge.path, placeAt(edge, position)).y();
}

// Heights that both long edges of a panel reach.
HeightRange sharedHeights(const CorsetFrame& frame, const ResolvedHeights& heights,
                          std::size_t panel) {
    const auto corner = [&](bool isFront, double position) {
        return cornerHeightMm(frame, panel, isFront, position);
    };
    return {std::max(corner(true, -heights.bottomMm[panel]),
                     corner(false, -heights.bottomMm[panel + 1])),
            std::min(corner(true, heights.topMm[panel]), corner(false, heights.topMm[panel + 1]))};
}

double frontEdgeXMm(const CorsetFrame& frame, std::size_t panel, double heightMm) {
    if (panel == 0) return 0;
    return (1 - frame.frontPart[panel - 1]) * frame.curves[panel - 1].valueMmAt(heightMm);
}

const LevelRow& nearestLevel(const CorsetFrame& frame, double heightMm) {
    return *std::ranges::min_element(
        frame.levels, {}, [&](const LevelRow& row) { return std::abs(row.heightMm - heightMm); });
}

}  // namespace

std::array<Point, 2> grainLine(const CorsetFrame& frame, const ResolvedHeights& heights,
                               std::size_t panel) {
    const HeightRange shared = sharedHeights(frame, heights, panel);
    const double x = frontEdgeXMm(frame, panel, 0) + frameWidthMm(frame, panel, 0) / 2;
    return grainLineAt(x, shared.lowestMm, shared.highestMm, [&](double y) {
        const double fromFrontMm = x - frontEdgeXMm(frame, panel, y);
        return std::min(fromFrontMm, frameWidthMm(frame, panel, y) - fromFrontMm);
    });
}

std::vector<Problem> checkPanelWidths(const CorsetFrame& frame, const ResolvedHeights& heights) {
    std::vector<Problem> problems;
    for (std::size_t panel = 0; panel < frame.panelCount(); ++panel) {
        const HeightRange shared = sharedHeights(frame, heights, panel);
        const NarrowPlace place = narrowestPlace(frame, panel, shared.lowestMm, shared.highestMm);
        if (place.widthMm >= tolerance::kNarrowestPanelMm) continue;
        const double x = frontEdgeXMm(frame, panel, place.heightMm) + place.widthMm / 2;
        problems.push_back({.code = ProblemCode::panelTooNarrow,
                            .subject = std::string(keyOf(nearestLevel(frame, place.heightMm).id)),
                            .panel = std::to_string(panel + 1),
                            .at = Point(x, place.heightMm),
                            .figures = {{"value", place.widthMm},
                                        {"limit", tolerance::kNarrowestPanelMm},
                                        {"height", place.heightMm}}});
    }
    return problems;
}

}  // namespace coutil
