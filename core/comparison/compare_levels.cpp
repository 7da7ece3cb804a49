#include "core/comparison/compare_levels.h"

#include <algorithm>

namespace coutil::comparison {
namespace {

std::optional<double> differenceMm(const std::optional<double>& a, const std::optional<double>& b) {
    if (!a || !b) return std::nullopt;
    return *b - *a;
}

std::optional<double> girthOf(const Compared& compared, const Level& level) {
    // The table of the pattern says it, unless only one side is meant.
    if (compared.side == PanelSide::both) return level.patternMm;
    return girthAtHeightMm(compared, level.heightMm, level.lacingGapMm);
}

const Level* named(const Pattern& pattern, const std::string& name) {
    const auto found = std::ranges::find(pattern.levels, name, &Level::name);
    return found == pattern.levels.end() ? nullptr : &*found;
}

LevelComparison compared(const Compared& a, const Level* inA, const Compared& b, const Level* inB) {
    LevelComparison level{.level = inB != nullptr ? inB->name : inA->name};
    if (inA != nullptr) {
        level.heightAMm = inA->heightMm;
        level.bodyMm = inA->bodyMm;
        level.targetMm = inA->targetMm;
        level.aMm = girthOf(a, *inA);
    }
    if (inB != nullptr) {
        level.heightBMm = inB->heightMm;
        if (inB->bodyMm) level.bodyMm = inB->bodyMm;
        if (inB->targetMm) level.targetMm = inB->targetMm;
        level.bMm = girthOf(b, *inB);
    }
    level.differenceMm = differenceMm(level.aMm, level.bMm);
    return level;
}

struct EdgeHeights {
    std::string seam{};
    PanelSide side = PanelSide::both;
    std::optional<double> topMm{};
    std::optional<double> bottomMm{};
};

std::vector<EdgeHeights> heightsOf(const Compared& compared, PanelSide side) {
    std::vector<EdgeHeights> heights{};
    for (const SeamEdges& seam : seamsOn(compared, side)) {
        const auto& at = seam.inFront ? seam.inFront : seam.behind;
        const Edge& edge = compared.pattern.panels[at->panel].edges[at->edge];
        EdgeHeights height{.seam = seam.name, .side = side};
        if (edge.waistMarkAtMm) {
            const SeamLengths lengths = seamLengthsOf(edge);
            height.topMm = lengths.aboveWaistMm;
            height.bottomMm = -lengths.belowWaistMm;
        }
        heights.push_back(std::move(height));
    }
    return heights;
}

void addHeights(const std::vector<EdgeHeights>& inA, const std::vector<EdgeHeights>& inB,
                std::vector<EdgeHeightComparison>& heights) {
    for (const EdgeRole line : {EdgeRole::top, EdgeRole::bottom}) {
        const auto heightOf = line == EdgeRole::top ? &EdgeHeights::topMm : &EdgeHeights::bottomMm;
        for (const EdgeHeights& a : inA) {
            const auto b = std::ranges::find(inB, a.seam, &EdgeHeights::seam);
            const auto bMm = b == inB.end() ? std::nullopt : (*b).*heightOf;
            heights.push_back(
                {line, a.seam, a.side, a.*heightOf, bMm, differenceMm(a.*heightOf, bMm)});
        }
        for (const EdgeHeights& b : inB) {
            if (std::ranges::find(inA, b.seam, &EdgeHeights::seam) == inA.end())
                heights.push_back({line, b.seam, b.side, {}, b.*heightOf, {}});
        }
    }
}

}  // namespace

std::optional<double> girthAtHeightMm(const Compared& compared, double heightMm,
                                      double lacingGapMm) {
    double girthMm = lacingGapMm;
    for (const Panel& panel : compared.pattern.panels) {
        if (!takesPart(compared, panel)) continue;
        const auto widthMm = widthAtHeightMm(panel, heightMm);
        if (!widthMm) return std::nullopt;
        girthMm += timesInGirth(compared, panel) * *widthMm;
    }
    return girthMm;
}

std::vector<LevelComparison> compareLevels(const Compared& a, const Compared& b) {
    std::vector<LevelComparison> levels{};
    for (const Level& level : b.pattern.levels)
        levels.push_back(compared(a, named(a.pattern, level.name), b, &level));
    for (const Level& level : a.pattern.levels) {
        if (named(b.pattern, level.name) == nullptr)
            levels.push_back(compared(a, &level, b, nullptr));
    }
    std::ranges::stable_sort(levels, std::ranges::greater{}, [](const LevelComparison& level) {
        return level.heightBMm ? *level.heightBMm : *level.heightAMm;
    });
    return levels;
}

std::vector<EdgeHeightComparison> compareEdgeHeights(const Compared& a, const Compared& b) {
    std::vector<EdgeHeightComparison> heights{};
    for (const PanelSide side : sidesApart(a, b))
        addHeights(heightsOf(a, side), heightsOf(b, side), heights);
    return heights;
}

}  // namespace coutil::comparison
