#include "core/making_up/eyelets.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <string>

#include "core/geometry/tolerances.h"
#include "core/making_up/choice_range.h"
#include "core/pattern/panel_key.h"

namespace coutil {
namespace {

std::vector<Problem> checkChoices(const EyeletChoices& c) {
    std::vector<Problem> problems;
    requireWithin("eyelets/diameter", c.diameterMm, 1, 20, problems);
    requireWithin("eyelets/pitch", c.pitchMm, std::max(c.diameterMm, 1.0), 200, problems);
    requireWithin("eyelets/end", c.endMm, 0, 200, problems);
    // Nearer than two holes side by side the cloth between them tears; 0 is none.
    if (c.waistPairMm != 0) {
        requireWithin("eyelets/waist_pair", c.waistPairMm, c.diameterMm,
                      std::max(c.pitchMm, c.diameterMm), problems);
    }
    requireWithin("eyelets/column", c.columnMm, 0, 200, problems);
    requireWithin("eyelets/bone_space", c.boneSpaceMm, 0, 100, problems);
    requireWithin("eyelets/bone_channel", c.boneChannelMm, 0, 50, problems);
    requireWithin("eyelets/opened_gap", c.openedGapMm, 0, 2000, problems);
    requireWithin("eyelets/tail", c.tailMm, 0, 5000, problems);
    return problems;
}

// The lacing gap at a height, between levels in proportion.
double gapAtMm(const Pattern& pattern, double heightMm) {
    const auto& levels = pattern.levels;  // top to bottom
    if (levels.empty()) return pattern.lacingGapMm;
    const auto below = std::ranges::find_if(
        levels, [heightMm](const Level& level) { return level.heightMm <= heightMm; });
    if (below == levels.begin()) return levels.front().lacingGapMm;
    if (below == levels.end()) return levels.back().lacingGapMm;
    const Level& above = *std::prev(below);
    const double share = (heightMm - below->heightMm) / (above.heightMm - below->heightMm);
    return below->lacingGapMm + share * (above.lacingGapMm - below->lacingGapMm);
}

Problem narrowRoom(double roomMm, double neededMm, const Panel* panel = nullptr,
                   const Point* at = nullptr) {
    Problem problem{.code = ProblemCode::eyeletRoomTooNarrow,
                    .severity = Severity::warning,
                    .subject = "eyelets",
                    .figures = {{"value", roomMm}, {"limit", neededMm}}};
    if (panel != nullptr) problem.panel = panelKey(*panel);
    if (at != nullptr) problem.at = *at;
    return problem;
}

// Column, bone and space have to find room: towards the edge, at the hole, and across the panel.
void checkRoom(const Pattern& pattern, const Eyelets& eyelets, const EyeletChoices& choices,
               std::vector<Problem>& problems) {
    const BonesBesideEyelets bones = bonesBesideEyelets(choices);
    const double halfMm = choices.boneChannelMm / 2;
    if (bones.outerMm < halfMm - tolerance::kSamePointMm)
        problems.push_back(narrowRoom(choices.columnMm, choices.boneSpaceMm + halfMm));
    const double atHoleMm = halfMm + choices.diameterMm / 2;
    if (choices.boneSpaceMm < atHoleMm - tolerance::kSamePointMm)
        problems.push_back(narrowRoom(choices.boneSpaceMm, atHoleMm));
    const double neededMm = bones.innerMm + halfMm;
    for (const bool isLeft : {true, false}) {
        if (!isLeft && eyelets.edges.left == eyelets.edges.right) break;
        const EdgeRef& ref = isLeft ? eyelets.edges.left : eyelets.edges.right;
        const Panel& panel = pattern.panels[ref.panel];
        const EyeletPair* narrowest = nullptr;
        double roomMm = neededMm;
        for (const EyeletPair& pair : eyelets.pairs) {
            const auto widthMm = widthAtHeightMm(panel, (isLeft ? pair.left : pair.right).y());
            if (!widthMm || *widthMm >= roomMm) continue;
            roomMm = *widthMm;
            narrowest = &pair;
        }
        if (narrowest == nullptr) continue;
        const Point& at = isLeft ? narrowest->left : narrowest->right;
        problems.push_back(narrowRoom(roomMm, neededMm, &panel, &at));
    }
}

void layLace(const Pattern& pattern, const EyeletChoices& choices, Eyelets& eyelets) {
    std::vector<double> positionsMm;
    std::vector<double> wornMm;
    for (const EyeletPair& pair : eyelets.pairs) {
        positionsMm.push_back(pair.positionMm);
        wornMm.push_back(gapAtMm(pattern, (pair.left.y() + pair.right.y()) / 2) +
                         2 * choices.columnMm);
    }
    eyelets.zigzagMm = zigzagLengthMm(positionsMm, wornMm);
    // It has to be long enough for the body to get in, and never shorter than what is worn.
    const std::vector<double> openedMm(positionsMm.size(),
                                       choices.openedGapMm + 2 * choices.columnMm);
    eyelets.laceMm =
        std::max(eyelets.zigzagMm, zigzagLengthMm(positionsMm, openedMm)) + 2 * choices.tailMm;
}

}  // namespace

Outcome<Eyelets> eyeletsFor(const Pattern& pattern, const EyeletChoices& choices) {
    auto problems = checkChoices(choices);
    if (!problems.empty()) return Outcome<Eyelets>::failed(std::move(problems));
    Eyelets eyelets;
    const auto edges = backOpening(pattern);
    if (!edges) return eyelets;
    eyelets.edges = *edges;
    eyelets.stretch = sharedStretchOf(pattern, *edges);
    const std::vector<double> positionsMm = eyeletPositionsMm(eyelets.stretch, choices);
    if (positionsMm.empty()) {
        return Problem{.code = ProblemCode::eyeletsDoNotFit,
                       .subject = "eyelets",
                       .figures = {{"value", eyelets.stretch.topMm - eyelets.stretch.bottomMm},
                                   {"limit", 2 * choices.endMm + choices.pitchMm}}};
    }
    const Edge& left = edgeAt(pattern, edges->left);
    const Edge& right = edgeAt(pattern, edges->right);
    for (const double positionMm : positionsMm) {
        eyelets.pairs.push_back({positionMm, *pointBesideEdge(left, positionMm, choices.columnMm),
                                 *pointBesideEdge(right, positionMm, choices.columnMm)});
    }
    eyelets.pitchBelowMm = positionsMm[1] - positionsMm[0];
    eyelets.pitchAboveMm = positionsMm.back() - positionsMm[positionsMm.size() - 2];
    eyelets.hasWaistPair =
        choices.waistPairMm > 0 &&
        std::ranges::find(positionsMm, choices.waistPairMm / 2) != positionsMm.end();
    layLace(pattern, choices, eyelets);
    checkRoom(pattern, eyelets, choices, problems);
    return {std::move(eyelets), std::move(problems)};
}

}  // namespace coutil
