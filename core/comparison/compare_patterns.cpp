#include "core/comparison/compare_edges.h"
#include "core/comparison/compare_levels.h"
#include "core/comparison/compare_seams.h"
#include "core/comparison/registration.h"

namespace coutil {
namespace {

using comparison::Compared;

void completePanel(const Compared& a, const Compared& b, Registration how, PanelComparison& pair) {
    const auto areaOf = [](const Panel& panel) { return signedAreaMm2(outlineOf(panel)); };
    if (pair.inA) pair.areaAMm2 = areaOf(a.pattern.panels[*pair.inA]);
    if (pair.inB) pair.areaBMm2 = areaOf(b.pattern.panels[*pair.inB]);
    if (!pair.inA || !pair.inB) return;
    const Panel& panelA = a.pattern.panels[*pair.inA];
    const Panel& panelB = b.pattern.panels[*pair.inB];
    pair.shiftOfB = comparison::shiftOnto(panelA, panelB, how);
    pair.edges = comparison::compareEdges(panelA, panelB, pair.shiftOfB);
}

Comparison compared(const Compared& a, const Compared& b, Registration how) {
    Comparison result;
    result.panels = comparison::pairedPanels(a, b);
    for (PanelComparison& pair : result.panels) completePanel(a, b, how, pair);
    result.seams = comparison::compareSeams(a, b, result.panels);
    result.levels = comparison::compareLevels(a, b);
    result.edgeHeights = comparison::compareEdgeHeights(a, b);
    return result;
}

}  // namespace

Comparison comparePatterns(const Pattern& a, const Pattern& b, Registration how) {
    return compared({a}, {b}, how);
}

Comparison compareSides(const Pattern& pattern) {
    return compared({pattern, PanelSide::left}, {pattern, PanelSide::right},
                    Registration::ownFrame);
}

}  // namespace coutil
