#include "core/block/draft_corset.h"

#include <algorithm>
#include <string>
#include <utility>

#include "core/block/corset_frame.h"
#include "core/block/corset_panels.h"
#include "core/block/edge_heights.h"
#include "core/block/girth_table.h"
#include "core/pattern/every_check.h"

namespace coutil {
namespace {

std::vector<Seam> seamsOf(const CorsetFrame& frame) {
    std::vector<Seam> seams;
    for (std::size_t seam = 0; seam < frame.seamCount(); ++seam) {
        seams.push_back({.name = seamName(seam),
                         .front = {seam, static_cast<std::size_t>(PanelEdge::back)},
                         .back = {seam + 1, static_cast<std::size_t>(PanelEdge::front)}});
    }
    return seams;
}

}  // namespace

Outcome<Pattern> draftCorset(const Body& body, const Style& style) {
    auto problems = checkStyle(style);
    if (std::ranges::any_of(problems, isError))
        return Outcome<Pattern>::failed(std::move(problems));
    const auto frame = corsetFrame(body, style);
    if (!frame) return Outcome<Pattern>::failed(frame.problems);
    const ResolvedHeights heights = edgeHeights(*frame, body, style);
    problems = checkEdgeHeights(*frame, heights);
    if (problems.empty()) problems = checkPanelWidths(*frame, heights);
    if (!problems.empty()) return Outcome<Pattern>::failed(std::move(problems));
    Pattern pattern;
    pattern.panels = corsetPanels(*frame, heights, style);
    pattern.seams = seamsOf(*frame);
    pattern.levels = drawnLevels(*frame, style, pattern.panels);
    pattern.lacingGapMm = style.lacingGapMm;
    pattern.estimates = body.estimates;
    problems = checkReduction(pattern);
    return {std::move(pattern), std::move(problems)};
}

ResolvedHeights resolvedHeights(const Body& body, const Style& style) {
    if (std::ranges::any_of(checkStyle(style), isError)) return {};
    const auto frame = corsetFrame(body, style);
    return frame ? edgeHeights(*frame, body, style) : ResolvedHeights{};
}

}  // namespace coutil
