#include "core/making_up/bone_plans.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <map>
#include <utility>

namespace coutil {
namespace {

using CountByLength = std::map<double, int, std::greater<>>;

const BoneStock* stockOf(const BoneChoices& choices, const BoneType& type) {
    const auto found = std::ranges::find(choices.stock, type, &BoneStock::type);
    return found == choices.stock.end() || found->lengthsMm.empty() ? nullptr : &*found;
}

void addPlan(const BoneStock& stock, const CountByLength& bones, const CuttingEffort& effort,
             BonesToBuy& toBuy, std::vector<Problem>& problems) {
    std::vector<PieceToCut> pieces;
    pieces.reserve(bones.size());
    for (const auto& [lengthMm, count] : bones) pieces.push_back({lengthMm, count});
    auto plan = cuttingPlan(pieces, stock.lengthsMm, stock.lossPerCutMm, effort);
    for (Problem& problem : plan.problems) {
        if (problem.code == ProblemCode::pieceLongerThanStock)
            problem.subject = boneTypeKey(stock.type);
        problems.push_back(std::move(problem));
    }
    if (plan) toBuy.plans.push_back({stock.type, std::move(*plan)});
}

}  // namespace

std::string boneTypeKey(const BoneType& type) {
    const long tenths = std::lround(type.widthMm * 10);
    std::string key(keyOf(type.kind));
    key.append(1, ' ').append(std::to_string(tenths / 10));
    if (tenths % 10 != 0) key.append(1, '.').append(std::to_string(tenths % 10));
    return key;
}

Outcome<BonesToBuy> bonesToBuy(const std::vector<BoneRow>& rows, const BoneChoices& choices,
                               const CuttingEffort& effort) {
    std::map<BoneType, CountByLength> byType;
    for (const BoneRow& row : rows) {
        if (row.lengthMm > 0 && row.count > 0) byType[row.type][row.lengthMm] += row.count;
    }
    BonesToBuy toBuy;
    std::vector<Problem> problems;
    for (const auto& [type, bones] : byType) {
        if (const BoneStock* stock = stockOf(choices, type)) {
            addPlan(*stock, bones, effort, toBuy, problems);
            continue;
        }
        if (!choices.stock.empty()) {
            problems.push_back({.code = ProblemCode::stockMissing,
                                .severity = Severity::note,
                                .subject = boneTypeKey(type)});
        }
        for (const auto& [lengthMm, count] : bones)
            toBuy.readyCut.push_back({type, lengthMm, count});
    }
    if (std::ranges::any_of(problems, isError))
        return Outcome<BonesToBuy>::failed(std::move(problems));
    return {std::move(toBuy), std::move(problems)};
}

}  // namespace coutil
