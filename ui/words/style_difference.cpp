#include "ui/words/style_difference.h"

#include <string>

#include "ui/words/trade_words.h"

namespace coutil {

namespace {

// A level that a style does not name has nothing.
double atLevel(const std::map<LevelId, double>& values, LevelId level) {
    const auto found = values.find(level);
    return found == values.end() ? 0 : found->second;
}

}  // namespace

QStringList styleDifference(const Style& before, const Style& after) {
    QStringList terms;
    const auto add = [&terms](bool isOther, const std::string& key) {
        if (isOther) terms.append(styleTerm(key));
    };
    add(before.panelsPerHalf != after.panelsPerHalf, "panels_per_half");
    add(before.lacingGapMm != after.lacingGapMm, "lacing_gap");
    add(before.lacingGapAtMm != after.lacingGapAtMm, "lacing_gap_at");
    for (const LevelId level : kAllLevels) {
        add(atLevel(before.easeMm, level) != atLevel(after.easeMm, level),
            "ease." + std::string(keyOf(level)));
    }
    add(before.front != after.front, "front");
    add(before.topEdge != after.topEdge, "top_edge");
    add(before.bottomEdge != after.bottomEdge, "bottom_edge");
    add(before.frontShare != after.frontShare, "front_share");
    add(before.panelShares != after.panelShares, "panel_shares");
    add(before.seamShares != after.seamShares, "seam_shares");
    add(before.frontPart != after.frontPart, "front_part");
    add(before.ownLevels != after.ownLevels, "own_levels");
    add(before.allowance != after.allowance, "allowance");
    return terms;
}

}  // namespace coutil
