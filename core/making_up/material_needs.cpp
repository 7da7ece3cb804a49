#include "core/making_up/material_needs.h"

#include <map>

namespace coutil {
namespace {

constexpr double kPerMetre = 1000;

}  // namespace

std::vector<MaterialNeed> needsOf(const Eyelets& eyelets, const EyeletChoices& choices) {
    if (eyelets.pairs.empty()) return {};
    return {{MaterialKind::eyelets,
             {},
             choices.diameterMm,
             MaterialUnit::piece,
             2.0 * static_cast<double>(eyelets.pairs.size())},
            {MaterialKind::lace, {}, 0, MaterialUnit::metre, eyelets.laceMm / kPerMetre}};
}

MaterialNeed needOf(const Busk& busk) {
    return {MaterialKind::busk, {}, busk.lengthMm, MaterialUnit::piece, 1};
}

MaterialNeed needOf(const Binding& binding) {
    return {MaterialKind::binding,
            {},
            binding.cutWidthMm,
            MaterialUnit::metre,
            binding.totalMm / kPerMetre};
}

std::vector<MaterialNeed> needsOf(const std::vector<TapeTotal>& tapes, MaterialKind kind) {
    std::vector<MaterialNeed> needs;
    needs.reserve(tapes.size());
    for (const TapeTotal& tape : tapes)
        needs.push_back({kind, {}, tape.widthMm, MaterialUnit::metre, tape.cutMm / kPerMetre});
    return needs;
}

MaterialNeed needOf(const ClothEstimate& estimate, const std::string& layer) {
    return {MaterialKind::cloth, layer, estimate.clothWidthMm, MaterialUnit::metre,
            estimate.lengthMm / kPerMetre};
}

std::vector<MaterialNeed> needsOf(const BonesToBuy& bones) {
    std::vector<MaterialNeed> needs;
    const auto add = [&needs](const BoneType& type, double lengthMm, int count) {
        needs.push_back({MaterialKind::boneStock, boneTypeKey(type), lengthMm, MaterialUnit::piece,
                         static_cast<double>(count)});
    };
    for (const auto& [type, plan] : bones.plans) {
        std::map<double, int> barsByLength;
        for (const PlannedBar& bar : plan.bars) barsByLength[bar.stockLengthMm] += bar.count;
        for (const auto& [stockMm, bars] : barsByLength) add(type, stockMm, bars);
    }
    for (const BoneTotal& ready : bones.readyCut) add(ready.type, ready.lengthMm, ready.count);
    return needs;
}

}  // namespace coutil
