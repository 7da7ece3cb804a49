#pragma once

#include <string>
#include <vector>

#include "core/making_up/bones.h"
#include "core/making_up/cutting_plan.h"

namespace coutil {

// The bones of one type, cut from its stock.
struct BonePlan {
    BoneType type{};
    CuttingPlan plan{};

    bool operator==(const BonePlan&) const = default;
};

// How all bones of a garment come from the shop: each type in the order of BoneType.
struct BonesToBuy {
    std::vector<BonePlan> plans{};
    std::vector<BoneTotal> readyCut{};  // bought in their lengths; longest first within a type

    bool operator==(const BonesToBuy&) const = default;
};

// "spiral_steel 6": names a bone in lists and prices. The width to the tenth of a millimetre.
[[nodiscard]] std::string boneTypeKey(const BoneType& type);

// A cutting plan for every type of bone that has stock lengths; bones of the others are bought
// ready cut. Rows without a bone (length 0) are left out. Problems: stockMissing (note; other types
// have stock, this one has not; subject: its key), and those of cuttingPlan, with the type's key as
// subject of pieceLongerThanStock.
[[nodiscard]] Outcome<BonesToBuy> bonesToBuy(const std::vector<BoneRow>& rows,
                                             const BoneChoices& choices,
                                             const CuttingEffort& effort = {});

}  // namespace coutil
