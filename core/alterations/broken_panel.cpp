#include "core/alterations/broken_panel.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/tolerances.h"
#include "core/pattern/outline_check.h"
#include "core/pattern/panel_key.h"

namespace coutil {
namespace {

bool isFinite(const Path& path) {
    return std::ranges::all_of(path.pieces, [](const Cubic& c) {
        return c.p0.allFinite() && c.p1.allFinite() && c.p2.allFinite() && c.p3.allFinite();
    });
}

// Where a panel is broken; nothing where it is sound.
std::optional<Point> breakOf(const Panel& panel) {
    const Path outline = outlineOf(panel);
    if (outline.isEmpty()) return std::nullopt;
    if (!isFinite(outline)) return Point::Zero();
    if (auto gap = gapOf(outline)) return gap;
    if (auto at = selfCrossingOf(flattened(outline, tolerance::kCheckFlatnessMm))) return at;
    if (signedAreaMm2(outline) <= 0) return outline.start();
    return std::nullopt;
}

const Panel* panelOf(const Pattern& pattern, const Panel& panel) {
    const auto found = std::ranges::find_if(pattern.panels, [&](const Panel& each) {
        return each.name == panel.name && (each.side == panel.side || each.side == PanelSide::both);
    });
    return found == pattern.panels.end() ? nullptr : &*found;
}

}  // namespace

std::optional<BrokenPanel> newlyBroken(const Pattern& before, const Pattern& after) {
    for (const Panel& panel : after.panels) {
        const Panel* old = panelOf(before, panel);
        if (old && old->edges == panel.edges) continue;
        const auto at = breakOf(panel);
        if (!at || (old && breakOf(*old))) continue;
        return BrokenPanel{panelKey(panel), at};
    }
    return std::nullopt;
}

}  // namespace coutil
