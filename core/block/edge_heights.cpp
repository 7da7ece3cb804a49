#include "core/block/edge_heights.h"

#include <algorithm>
#include <map>
#include <utility>

#include "core/block/default_heights.h"
#include "core/block/monotone_line.h"

namespace coutil {
namespace {

constexpr double kLeastFromWaistMm = 10;
constexpr double kMostBeyondLevelsMm = 150;

// Ends are counted like the corners of the whole half: 0 centre front, then the seams, last centre
// back. Everything here is up positive.
using FixedEnds = std::map<std::size_t, double>;

double heightAtPosition(const CorsetFrame& frame, std::size_t end, double positionMm) {
    if (end == 0 || end == frame.panelCount()) return positionMm;
    const auto heightOn = [&](const SeamEdge& edge) {
        return pointAt(edge.path, placeAt(edge, positionMm)).y();
    };
    return (heightOn(frame.frontEdges[end - 1]) + heightOn(frame.backEdges[end - 1])) / 2;
}

double positionAtHeight(const CorsetFrame& frame, std::size_t end, double heightMm) {
    if (end == 0 || end == frame.panelCount()) return heightMm;
    return (positionAtHeightMm(frame.frontEdges[end - 1], heightMm) +
            positionAtHeightMm(frame.backEdges[end - 1], heightMm)) /
           2;
}

double distanceOf(const CorsetFrame& frame, std::size_t end) {
    return end == 0 ? 0 : frame.widths.seamAtMm(end - 1);
}

void fix(FixedEnds& fixed, std::size_t end, const std::optional<double>& mm, double sign) {
    if (mm) fixed[end] = sign * *mm;
}

void fixSeams(FixedEnds& fixed, const CorsetFrame& frame,
              const std::map<std::string, double>& atSeamMm, double sign) {
    for (std::size_t seam = 0; seam < frame.seamCount(); ++seam) {
        const auto found = atSeamMm.find(seamName(seam));
        if (found != atSeamMm.end()) fixed[seam + 1] = sign * found->second;
    }
}

// What is not fixed, on a line through the fixed ends and the heights the body gives.
template <class ValueAt>
std::vector<double> filled(const CorsetFrame& frame, const FixedEnds& fixed,
                           const std::map<std::size_t, double>& defaultHeightMm, ValueAt valueAt) {
    MonotoneLine line;
    for (const auto& [end, heightMm] : defaultHeightMm) line.add(distanceOf(frame, end), heightMm);
    for (const auto& [end, positionMm] : fixed)
        line.add(distanceOf(frame, end), heightAtPosition(frame, end, positionMm));
    std::vector<double> positionsMm;
    for (std::size_t end = 0; end <= frame.panelCount(); ++end) {
        const auto found = fixed.find(end);
        positionsMm.push_back(
            found != fixed.end()
                ? found->second
                : positionAtHeight(frame, end, valueAt(line, distanceOf(frame, end))));
    }
    return positionsMm;
}

// A straight edge is level as long as the style gives one end only, else it slopes evenly.
std::vector<double> straightEnds(const CorsetFrame& frame, const FixedEnds& fixed,
                                 double defaultHeightMm) {
    std::map<std::size_t, double> heights;
    if (fixed.empty()) heights[0] = defaultHeightMm;
    return filled(frame, fixed, heights,
                  [](const MonotoneLine& line, double x) { return line.straightValueAt(x); });
}

std::vector<double> topEnds(const CorsetFrame& frame, const Body& body, const TopEdgeStyle& style) {
    const std::size_t side = frame.widths.sideSeam() + 1;
    const std::size_t back = frame.panelCount();
    FixedEnds fixed;
    fix(fixed, 0, style.frontMm, 1);
    fix(fixed, side, style.sideMm, 1);
    fix(fixed, 1, style.bustSeamMm, 1);
    fix(fixed, back, style.backMm, 1);
    fixSeams(fixed, frame, style.atSeamMm, 1);
    const TopDefaults top = topDefaults(frame.levels, body, style.shape);
    if (style.shape == TopShape::straight) return straightEnds(frame, fixed, top.frontMm);
    const LineEnd first = style.shape == TopShape::pointed ? LineEnd::pointed : LineEnd::level;
    return filled(frame, fixed,
                  {{0, top.frontMm}, {1, top.bustMm}, {side, top.sideMm}, {back, top.backMm}},
                  [first](const MonotoneLine& line, double x) {
                      return line.at(x, first, LineEnd::level).y;
                  });
}

std::vector<double> bottomEnds(const CorsetFrame& frame, const Body& body,
                               const BottomEdgeStyle& style) {
    const std::size_t side = frame.widths.sideSeam() + 1;
    const std::size_t back = frame.panelCount();
    FixedEnds fixed;
    fix(fixed, 0, style.frontMm, -1);
    fix(fixed, side, style.sideMm, -1);
    fix(fixed, back, style.backMm, -1);
    fixSeams(fixed, frame, style.atSeamMm, -1);
    const BottomDefaults bottom = bottomDefaults(frame.levels, body, style.shape);
    if (style.shape == BottomShape::straight) return straightEnds(frame, fixed, -bottom.frontMm);
    const LineEnd first = style.shape == BottomShape::pointed ? LineEnd::pointed : LineEnd::level;
    return filled(frame, fixed,
                  {{0, -bottom.frontMm}, {side, -bottom.sideMm}, {back, -bottom.backMm}},
                  [first](const MonotoneLine& line, double x) {
                      return line.at(x, first, LineEnd::level).y;
                  });
}

std::string endName(const CorsetFrame& frame, std::size_t end) {
    if (end == 0) return "centre front";
    return end == frame.panelCount() ? "centre back" : seamName(end - 1);
}

}  // namespace

ResolvedHeights edgeHeights(const CorsetFrame& frame, const Body& body, const Style& style) {
    ResolvedHeights heights{topEnds(frame, body, style.topEdge),
                            bottomEnds(frame, body, style.bottomEdge), frame.widths.sideSeam()};
    for (double& mm : heights.bottomMm) mm = -mm;
    return heights;
}

std::vector<Problem> checkEdgeHeights(const CorsetFrame& frame, const ResolvedHeights& heights) {
    std::vector<Problem> problems;
    const auto look = [&](const char* subject, const std::vector<double>& mm, double mostMm) {
        for (std::size_t end = 0; end < mm.size(); ++end) {
            if (mm[end] >= kLeastFromWaistMm && mm[end] <= mostMm) continue;
            problems.push_back(
                {.code = ProblemCode::edgeHeightImpossible,
                 .subject = subject,
                 .detail = endName(frame, end),
                 .figures = {
                     {"value", mm[end]}, {"lowest", kLeastFromWaistMm}, {"highest", mostMm}}});
        }
    };
    look("top_edge", heights.topMm, frame.levels.back().heightMm + kMostBeyondLevelsMm);
    look("bottom_edge", heights.bottomMm, -frame.levels.front().heightMm + kMostBeyondLevelsMm);
    return problems;
}

}  // namespace coutil
