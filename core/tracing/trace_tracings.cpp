#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

#include "core/geometry/offset_outline.h"
#include "core/pattern/mirrored_panel.h"
#include "core/pattern/panel_key.h"
#include "core/tracing/allowance.h"
#include "core/tracing/label_room.h"
#include "core/tracing/notches.h"
#include "core/tracing/tracing.h"

namespace coutil {

namespace {

void setCutCount(const Panel& panel, Tracing& tracing) {
    const bool isPair = panel.side == PanelSide::both && !isCutOnFold(panel);
    tracing.cutCount = isPair ? 2 : 1;
    tracing.isMirroredPair = isPair;
}

void setLabel(const Panel& panel, Tracing& tracing) {
    const LabelRoom room = labelRoomOf(panel);
    if (!room.label.isEmpty()) {
        tracing.labelAt = (room.label.lowest + room.label.highest) / 2;
        tracing.labelWidthMm = room.label.widthMm();
        tracing.labelHeightMm = room.label.heightMm();
    }
    if (!room.number.isEmpty()) {
        tracing.numberAt = (room.number.lowest + room.number.highest) / 2;
        tracing.numberHeightMm = room.number.heightMm();
    }
}

// A right panel is drawn as the left one is; its piece is the other way round.
void turnOver(Tracing& tracing) {
    tracing.sewing = mirrored(tracing.sewing);
    std::reverse(tracing.allowancesMm.begin() + 1, tracing.allowancesMm.end());
    tracing.cutting = reversed(mirrored(tracing.cutting));
    for (Notch& notch : tracing.notches) {
        notch.at = mirrored(notch.at);
        notch.outward = mirrored(notch.outward);
    }
    for (Point& end : tracing.grain) end = mirrored(end);
    for (LevelLine& line : tracing.levels) {
        line.front = mirrored(line.front);
        line.back = mirrored(line.back);
    }
    tracing.labelAt = mirrored(tracing.labelAt);
    tracing.numberAt = mirrored(tracing.numberAt);
}

Problem badAllowance(const Panel& panel, const Edge& edge, double widthMm) {
    Problem problem;
    problem.code = ProblemCode::styleValueOutOfRange;
    problem.subject = "allowance.by_edge." + panel.name + "/" + edge.name;
    problem.panel = panelKey(panel);
    problem.figures = {{"value", widthMm, FigureUnit::millimetre},
                       {"lowest", 0, FigureUnit::millimetre}};
    return problem;
}

Outcome<OffsetOutline> cuttingLineOf(const Panel& panel, const AllowanceStyle& style,
                                     Tracing& tracing) {
    std::vector<OffsetEdge> edges;
    std::vector<CornerTreatment> corners;
    std::vector<Problem> problems;
    for (std::size_t k = 0; k < panel.edges.size(); ++k) {
        const Edge& edge = panel.edges[k];
        const Edge& next = panel.edges[(k + 1) % panel.edges.size()];
        const double width = allowanceMm(style, panel, edge);
        if (!(width >= 0) || !std::isfinite(width)) {
            problems.push_back(badAllowance(panel, edge, width));
        }
        edges.push_back({edge.path, width});
        corners.push_back(treatmentBetween(edge.role, next.role));
        tracing.allowancesMm.push_back(width);
    }
    if (!problems.empty()) return Outcome<OffsetOutline>::failed(std::move(problems));
    auto outline = offsetOutline(edges, corners);
    for (Problem& problem : outline.problems) problem.panel = panelKey(panel);
    return outline;
}

// Widths the maker gave to edges that this pattern does not have, say after a change of the panel
// count.
void appendUnknownEdges(const Pattern& pattern, const AllowanceStyle& style,
                        std::vector<Problem>& problems) {
    std::set<std::string> known;
    for (const Panel& panel : pattern.panels) {
        for (const Edge& edge : panel.edges) known.insert(panel.name + "/" + edge.name);
    }
    for (const auto& [edge, widthMm] : style.byEdgeMm) {
        if (known.contains(edge)) continue;
        Problem problem;
        problem.code = ProblemCode::styleUnknownKey;
        problem.severity = Severity::warning;
        problem.subject = "allowance.by_edge";
        problem.detail = edge;
        problems.push_back(std::move(problem));
    }
}

}  // namespace

Outcome<std::vector<Tracing>> traceTracings(const Pattern& pattern,
                                            const AllowanceStyle& allowance) {
    std::vector<Tracing> tracings;
    std::vector<Problem> problems;
    appendUnknownEdges(pattern, allowance, problems);
    for (std::size_t k = 0; k < pattern.panels.size(); ++k) {
        const Panel& panel = pattern.panels[k];
        Tracing tracing;
        tracing.panel = panel.name;
        tracing.side = panel.side;
        tracing.isOnFold = isCutOnFold(panel);
        tracing.sewing = panel.edges;
        tracing.grain = panel.grain;
        tracing.levels = panel.levels;
        setCutCount(panel, tracing);
        auto cutting = cuttingLineOf(panel, allowance, tracing);
        problems.insert(problems.end(), cutting.problems.begin(), cutting.problems.end());
        if (!cutting) continue;
        tracing.notches = notchesOf(pattern, k, cutting->points);
        tracing.cutting = std::move(cutting->path);
        setLabel(panel, tracing);
        if (panel.side == PanelSide::right) turnOver(tracing);
        tracings.push_back(std::move(tracing));
    }
    if (tracings.size() != pattern.panels.size()) {
        return Outcome<std::vector<Tracing>>::failed(std::move(problems));
    }
    return {std::move(tracings), std::move(problems)};
}

}  // namespace coutil
