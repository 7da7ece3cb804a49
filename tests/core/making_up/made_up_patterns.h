#pragma once

#include <cmath>
#include <cstddef>
#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "core/alterations/whole_pattern.h"
#include "core/block/draft_corset.h"
#include "core/measurements/body.h"
#include "tests/bodies/ansur_bodies.h"

namespace coutil::made_up {

// A half of upright rectangles, from `belowMm` under the waist to `aboveMm` over it, laced at the
// back and opening (or folded) at the front: everything about it is known in closed form.
inline Pattern rectangles(int count, double widthMm, double aboveMm, double belowMm,
                          EdgeRole front = EdgeRole::opening, double gapMm = 50) {
    Pattern pattern;
    pattern.lacingGapMm = gapMm;
    for (int p = 0; p < count; ++p) {
        const Point low(0, -belowMm);
        const Point lowBack(widthMm, -belowMm);
        const Point high(0, aboveMm);
        const Point highBack(widthMm, aboveMm);
        const bool isFirst = p == 0;
        const bool isLast = p + 1 == count;
        Panel panel{.name = std::to_string(p + 1)};
        panel.isOnFold = isFirst && front == EdgeRole::fold;
        panel.edges = {
            {.name = "bottom", .role = EdgeRole::bottom, .path = straightPath(low, lowBack)},
            {.name = isLast ? "centre back" : "seam " + std::to_string(p + 1),
             .role = isLast ? EdgeRole::opening : EdgeRole::seam,
             .path = straightPath(lowBack, highBack),
             .waistMarkAtMm = belowMm,
             .runsUp = true},
            {.name = "top", .role = EdgeRole::top, .path = straightPath(highBack, high)},
            {.name = isFirst ? "centre front" : "seam " + std::to_string(p),
             .role = isFirst ? front : EdgeRole::seam,
             .path = straightPath(high, low),
             .waistMarkAtMm = aboveMm}};
        pattern.panels.push_back(panel);
    }
    return pattern;
}

// The edge with a name on one panel.
inline Edge& edgeNamed(Panel& panel, const std::string& name) {
    for (Edge& edge : panel.edges) {
        if (edge.name == name) return edge;
    }
    ADD_FAILURE() << "no edge " << name;
    return panel.edges.front();
}

// A style for the k-th body, so that all counts, shapes, closures and bindings are met.
inline Style styleOf(std::size_t k) {
    Style style;
    style.panelsPerHalf = 4 + static_cast<int>(k % 4);
    style.front = static_cast<FrontClosure>(k / 4 % 3);
    style.topEdge.shape = static_cast<TopShape>(k / 2 % 4);
    style.bottomEdge.shape = static_cast<BottomShape>(k / 3 % 4);
    style.allowance.isTopBound = k % 3 != 0;
    style.allowance.isBottomBound = k % 5 != 0;
    if (k % 7 == 3) style.lacingGapAtMm = {{LevelId::waist, 80}};
    return style;
}

// Drafted corsets of every `step`-th woman of ANSUR II; every second one with left and right panels
// of its own, on which the right laced edge has lost `k % 30` mm at its top.
template <class Visit>
void visitCorsets(std::size_t step, const Visit& visit) {
    const auto sets = bodies::ansurBodies();
    std::size_t seen = 0;
    for (std::size_t k = 0; k < sets.size(); k += step, ++seen) {
        SCOPED_TRACE("woman " + std::to_string(k));
        const auto body = completeBody(sets[k]);
        ASSERT_TRUE(body.hasValue());
        const Style style = styleOf(seen);
        const auto half = draftCorset(*body, style);
        ASSERT_TRUE(half.hasValue());
        if (seen % 2 == 0) {
            visit(*half, style);
            continue;
        }
        Pattern whole = wholeOf(*half);
        Edge& back = edgeNamed(whole.panels.back(), "centre back");
        const double lostMm = static_cast<double>(k % 30);
        back.path = betweenLengths(back.path, 0, lengthMm(back.path) - lostMm);
        visit(whole, style);
    }
    EXPECT_GE(seen, 30U);
}

}  // namespace coutil::made_up
