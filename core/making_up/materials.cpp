#include "core/making_up/materials.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/geometry/tolerances.h"
#include "core/making_up/choice_range.h"

namespace coutil {
namespace {

constexpr double kDearest = 1e6;
constexpr double kTenthsPerMetre = 10;

// Rounded up, but not for what is only a rounding of the number itself.
double wholeUp(double value) { return std::ceil(value - tolerance::kSameMeetingMm); }

double amountToBuy(const MaterialNeed& need, double sparePart) {
    const bool isSpared = need.kind != MaterialKind::busk && need.kind != MaterialKind::lace;
    const double amount = need.amount * (1 + (isSpared ? sparePart : 0));
    if (need.unit == MaterialUnit::piece) return wholeUp(amount);
    return wholeUp(amount * kTenthsPerMetre) / kTenthsPerMetre;
}

bool isSameMaterial(const MaterialNeed& a, const MaterialNeed& b) {
    return a.kind == b.kind && a.detail == b.detail && a.unit == b.unit &&
           std::abs(a.sizeMm - b.sizeMm) <= tolerance::kSamePointMm;
}

std::vector<MaterialNeed> gathered(const std::vector<MaterialNeed>& needs) {
    std::vector<MaterialNeed> together;
    for (const MaterialNeed& need : needs) {
        if (!(need.amount > 0)) continue;
        const auto same = std::ranges::find_if(
            together, [&](const MaterialNeed& other) { return isSameMaterial(need, other); });
        if (same == together.end()) {
            together.push_back(need);
        } else {
            same->amount += need.amount;
        }
    }
    return together;
}

}  // namespace

std::string_view keyOf(MaterialKind kind) {
    switch (kind) {
        case MaterialKind::cloth:
            return "cloth";
        case MaterialKind::boneStock:
            return "bone_stock";
        case MaterialKind::busk:
            return "busk";
        case MaterialKind::eyelets:
            return "eyelets";
        case MaterialKind::lace:
            return "lace";
        case MaterialKind::waistTape:
            return "waist_tape";
        case MaterialKind::channelTape:
            return "channel_tape";
        case MaterialKind::binding:
            return "binding";
    }
    return "";
}

std::string materialKey(const MaterialNeed& need) {
    std::string key(keyOf(need.kind));
    if (!need.detail.empty()) key += "/" + need.detail;
    return key;
}

Outcome<MaterialsList> materialsList(const std::vector<MaterialNeed>& needs,
                                     const MaterialChoices& choices) {
    std::vector<Problem> problems;
    requireWithin("materials/spare_part", choices.sparePart, 0, 10, problems, FigureUnit::count);
    for (const auto& [key, price] : choices.priceByKey) {
        requireWithin("materials/price_by_key/" + key, price, 0, kDearest, problems,
                      FigureUnit::count);
    }
    if (!problems.empty()) return Outcome<MaterialsList>::failed(std::move(problems));
    MaterialsList list;
    for (MaterialNeed& need : gathered(needs)) {
        MaterialRow row;
        row.amountToBuy = amountToBuy(need, choices.sparePart);
        const auto price = choices.priceByKey.find(materialKey(need));
        if (price == choices.priceByKey.end()) {
            list.isPriceMissing = true;
        } else {
            row.price = price->second;
            row.cost = price->second * row.amountToBuy;
            list.cost += *row.cost;
        }
        row.need = std::move(need);
        list.rows.push_back(std::move(row));
    }
    return list;
}

}  // namespace coutil
