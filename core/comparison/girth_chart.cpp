#include "core/comparison/girth_chart.h"

#include <algorithm>
#include <cmath>

#include "core/comparison/compare_levels.h"
#include "core/geometry/tolerances.h"

namespace coutil {
namespace {

using comparison::Compared;

// Levels are sorted top to bottom.
double lacingGapMm(const Pattern& pattern, double heightMm) {
    const auto& levels = pattern.levels;
    if (levels.empty()) return pattern.lacingGapMm;
    if (heightMm >= levels.front().heightMm) return levels.front().lacingGapMm;
    for (std::size_t i = 1; i < levels.size(); ++i) {
        const Level& over = levels[i - 1];
        const Level& under = levels[i];
        if (heightMm < under.heightMm) continue;
        const double share = (heightMm - under.heightMm) / (over.heightMm - under.heightMm);
        return under.lacingGapMm + share * (over.lacingGapMm - under.lacingGapMm);
    }
    return levels.back().lacingGapMm;
}

std::optional<double> girthMm(const Compared& compared, double heightMm) {
    return comparison::girthAtHeightMm(compared, heightMm, lacingGapMm(compared.pattern, heightMm));
}

std::vector<double> heightsOf(const Pattern& a, const Pattern& b, double stepMm) {
    Box box;
    std::vector<double> heights;
    for (const Pattern* pattern : {&a, &b}) {
        for (const Panel& panel : pattern->panels) box.include(boundsOf(outlineOf(panel)));
        for (const Level& level : pattern->levels) heights.push_back(level.heightMm);
    }
    if (box.isEmpty()) return {};
    for (double y = std::ceil(box.lowest.y() / stepMm) * stepMm; y <= box.highest.y(); y += stepMm)
        heights.push_back(y);
    std::ranges::sort(heights);
    const auto isSame = [](double x, double y) { return y - x <= tolerance::kOnLevelMm; };
    heights.erase(std::unique(heights.begin(), heights.end(), isSame), heights.end());
    return heights;
}

void addBody(const Pattern& pattern, std::vector<BodyGirth>& body) {
    for (const Level& level : pattern.levels) {
        if (level.bodyMm && std::ranges::find(body, level.name, &BodyGirth::level) == body.end())
            body.push_back({level.name, level.heightMm, *level.bodyMm});
    }
}

GirthChart chartOf(const Compared& a, const Compared& b, double stepMm) {
    GirthChart chart;
    for (const double heightMm : heightsOf(a.pattern, b.pattern, stepMm)) {
        const GirthAt at{heightMm, girthMm(a, heightMm), girthMm(b, heightMm)};
        if (at.aMm || at.bMm) chart.girths.push_back(at);
    }
    addBody(b.pattern, chart.body);
    addBody(a.pattern, chart.body);
    std::ranges::stable_sort(chart.body, {}, &BodyGirth::heightMm);
    return chart;
}

}  // namespace

GirthChart girthChart(const Pattern& a, const Pattern& b, double stepMm) {
    return chartOf({a}, {b}, stepMm);
}

GirthChart girthChartOfSides(const Pattern& pattern, double stepMm) {
    return chartOf({pattern, PanelSide::left}, {pattern, PanelSide::right}, stepMm);
}

}  // namespace coutil
