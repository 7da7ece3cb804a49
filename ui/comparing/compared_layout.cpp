#include "ui/comparing/compared_layout.h"

#include <algorithm>

#include "core/comparison/exaggerated_outline.h"

namespace coutil {

namespace {

constexpr double kSpaceBetweenRowsMm = 60;

void shiftBy(PairOnTable& pair, const Vector& by) {
    const Placement placement{.shift = by};
    pair.a = placed(pair.a, placement);
    pair.b = placed(pair.b, placement);
    pair.shift += by;
}

Box boxOf(const PairOnTable& pair) {
    Box box;
    if (!pair.a.isEmpty()) box.include(boundsOf(pair.a));
    if (!pair.b.isEmpty()) box.include(boundsOf(pair.b));
    return box;
}

// Both lines in the frame of a.
PairOnTable laidOn(const ComparedStates& states, const PanelComparison& pair, double factor) {
    PairOnTable made;
    if (pair.inA) made.a = outlineOf(states.a.pattern.panels[*pair.inA]);
    if (!pair.inB) return made;
    if (pair.inA && factor != 1) {
        made.b = exaggeratedOutline(states.a.pattern, states.b.pattern, pair, factor);
        made.isMultiplied = !made.b.isEmpty();
    }
    if (made.b.isEmpty()) {
        made.b = placed(outlineOf(states.b.pattern.panels[*pair.inB]),
                        Placement{.shift = pair.shiftOfB});
    }
    return made;
}

// Beside each other from x = 0 on.
Box layRow(std::vector<PairOnTable*>& row) {
    Box all;
    double left = 0;
    for (PairOnTable* pair : row) {
        const Box box = boxOf(*pair);
        shiftBy(*pair, {left - box.lowest.x(), 0});
        left += box.widthMm() + kSpaceBetweenPairsMm;
        all.include(boxOf(*pair));
    }
    return all;
}

}  // namespace

const Panel& panelShown(const ComparedStates& states, const PanelComparison& pair) {
    return pair.inA ? states.a.pattern.panels[*pair.inA] : states.b.pattern.panels[*pair.inB];
}

bool reachesLevel(const Pattern& pattern, const std::string& level) {
    return std::ranges::any_of(pattern.panels, [&](const Panel& panel) {
        return std::ranges::find(panel.levels, level, &LevelLine::level) != panel.levels.end();
    });
}

ComparedLayout comparedLayout(const ComparedStates& states, double factor) {
    ComparedLayout layout;
    const auto& compared = states.comparison.panels;
    for (const PanelComparison& pair : compared) {
        layout.pairs.push_back(laidOn(states, pair, factor));
    }
    std::vector<PairOnTable*> upper;
    std::vector<PairOnTable*> under;
    for (std::size_t i = 0; i < compared.size(); ++i) {
        (compared[i].side == PanelSide::right ? under : upper).push_back(&layout.pairs[i]);
    }
    if (upper.empty()) std::swap(upper, under);
    layout.box = layRow(upper);
    layout.waistHeightMm = {0};
    if (under.empty()) return layout;
    const Box row = layRow(under);
    const double down = layout.box.lowest.y() - kSpaceBetweenRowsMm - row.highest.y();
    for (PairOnTable* pair : under) {
        shiftBy(*pair, {0, down});
        layout.box.include(boxOf(*pair));
    }
    layout.waistHeightMm.push_back(down);
    return layout;
}

}  // namespace coutil
