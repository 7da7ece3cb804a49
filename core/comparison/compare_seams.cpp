#include "core/comparison/compare_seams.h"

#include <algorithm>
#include <cmath>

#include "core/comparison/largest_amount.h"

namespace coutil::comparison {
namespace {

// A seam of one side in both patterns; either may be missing.
struct SeamPair {
    const SeamEdges* inA = nullptr;
    const SeamEdges* inB = nullptr;

    [[nodiscard]] const SeamEdges& any() const { return inA != nullptr ? *inA : *inB; }
};

const SeamEdges* named(const std::vector<SeamEdges>& seams, const std::string& name) {
    const auto found = std::ranges::find(seams, name, &SeamEdges::name);
    return found == seams.end() ? nullptr : &*found;
}

std::vector<SeamPair> pairedSeams(const std::vector<SeamEdges>& inA,
                                  const std::vector<SeamEdges>& inB) {
    std::vector<SeamPair> pairs;
    pairs.reserve(inA.size());
    for (const SeamEdges& seam : inA) pairs.push_back({&seam, named(inB, seam.name)});
    std::size_t behind = 0;
    for (const SeamEdges& seam : inB) {
        const auto known = std::ranges::find(pairs, &seam, &SeamPair::inB);
        if (known != pairs.end()) {
            behind = static_cast<std::size_t>(known - pairs.begin()) + 1;
        } else {
            pairs.insert(pairs.begin() + static_cast<std::ptrdiff_t>(behind++), {nullptr, &seam});
        }
    }
    return pairs;
}

// The levels of a pattern, and those only in the other, top to bottom.
std::vector<std::string> levelNames(const Pattern& a, const Pattern& b) {
    std::vector<Level> levels = b.levels;
    for (const Level& level : a.levels) {
        if (std::ranges::find(levels, level.name, &Level::name) == levels.end())
            levels.push_back(level);
    }
    std::ranges::stable_sort(levels, std::ranges::greater{}, &Level::heightMm);
    std::vector<std::string> names;
    names.reserve(levels.size());
    for (const Level& level : levels) names.push_back(level.name);
    return names;
}

const LevelLine* lineOf(const Panel& panel, const std::string& level) {
    const auto found = std::ranges::find(panel.levels, level, &LevelLine::level);
    return found == panel.levels.end() ? nullptr : &*found;
}

class SeamComparer {
  public:
    SeamComparer(const Compared& a, const Compared& b, const std::vector<PanelComparison>& panels)
        : a_(a), b_(b), panels_(panels), levels_(levelNames(a.pattern, b.pattern)) {}

    [[nodiscard]] SeamComparison compared(const SeamPair& pair) const {
        SeamComparison seam{.name = pair.any().name,
                            .side = pair.any().side,
                            .isInA = pair.inA != nullptr,
                            .isInB = pair.inB != nullptr};
        for (const std::string& level : levels_) seam.levels.push_back(atLevel(pair, level));
        if (pair.inA != nullptr) seam.lengthsA = lengthsOf(a_, *pair.inA);
        if (pair.inB != nullptr) seam.lengthsB = lengthsOf(b_, *pair.inB);
        if (pair.inA != nullptr && pair.inB != nullptr) {
            seam.largest =
                largestAmount(sideOf(pair, &SeamEdges::inFront), sideOf(pair, &SeamEdges::behind));
        }
        return seam;
    }

  private:
    using EdgeOf = std::optional<LongEdge> SeamEdges::*;

    [[nodiscard]] static std::optional<SeamLengths> lengthsOf(const Compared& compared,
                                                              const SeamEdges& seam) {
        const auto& at = seam.inFront ? seam.inFront : seam.behind;
        if (!at) return std::nullopt;
        return seamLengthsOf(compared.pattern.panels[at->panel].edges[at->edge]);
    }

    // The pair of panels that an edge of the seam belongs to in both; nothing where it is not one.
    [[nodiscard]] const PanelComparison* panelsAt(const SeamPair& pair, EdgeOf which) const {
        if (pair.inA == nullptr || pair.inB == nullptr) return nullptr;
        const auto& inA = pair.inA->*which;
        const auto& inB = pair.inB->*which;
        if (!inA || !inB) return nullptr;
        const auto found = std::ranges::find_if(panels_, [&](const PanelComparison& panel) {
            return panel.inA == inA->panel && panel.inB == inB->panel;
        });
        return found == panels_.end() ? nullptr : &*found;
    }

    [[nodiscard]] MovedEdge sideOf(const SeamPair& pair, EdgeOf which) const {
        const PanelComparison* panels = panelsAt(pair, which);
        if (panels == nullptr) return {};
        return {&a_.pattern.panels[*panels->inA].edges[(pair.inA->*which)->edge],
                &b_.pattern.panels[*panels->inB].edges[(pair.inB->*which)->edge], panels->shiftOfB};
    }

    // What one panel takes in at its edge of the seam.
    [[nodiscard]] std::optional<double> partAt(const SeamPair& pair, EdgeOf which,
                                               const std::string& level) const {
        const PanelComparison* panels = panelsAt(pair, which);
        if (panels == nullptr) return std::nullopt;
        const LevelLine* lineA = lineOf(a_.pattern.panels[*panels->inA], level);
        const LevelLine* lineB = lineOf(b_.pattern.panels[*panels->inB], level);
        if (lineA == nullptr || lineB == nullptr) return std::nullopt;
        const double shiftMm = panels->shiftOfB.x();
        const Edge& edge = a_.pattern.panels[*panels->inA].edges[(pair.inA->*which)->edge];
        return edge.runsUp ? lineA->back.x() - (lineB->back.x() + shiftMm)
                           : lineB->front.x() + shiftMm - lineA->front.x();
    }

    [[nodiscard]] SeamAtLevel atLevel(const SeamPair& pair, const std::string& level) const {
        SeamAtLevel at{.level = level,
                       .inFrontMm = partAt(pair, &SeamEdges::inFront, level),
                       .behindMm = partAt(pair, &SeamEdges::behind, level)};
        const bool hasFront = pair.any().inFront.has_value();
        const bool hasBehind = pair.any().behind.has_value();
        if (hasFront == at.inFrontMm.has_value() && hasBehind == at.behindMm.has_value())
            at.amountMm = at.inFrontMm.value_or(0) + at.behindMm.value_or(0);
        return at;
    }

    const Compared& a_;
    const Compared& b_;
    const std::vector<PanelComparison>& panels_;
    std::vector<std::string> levels_;
};

}  // namespace

std::vector<SeamComparison> compareSeams(const Compared& a, const Compared& b,
                                         const std::vector<PanelComparison>& panels) {
    std::vector<SeamComparison> seams;
    const SeamComparer comparer(a, b, panels);
    for (const PanelSide side : sidesApart(a, b)) {
        const auto inA = seamsOn(a, side);
        const auto inB = seamsOn(b, side);
        for (const SeamPair& pair : pairedSeams(inA, inB)) seams.push_back(comparer.compared(pair));
    }
    return seams;
}

}  // namespace coutil::comparison
