#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/making_up/material_choices.h"
#include "core/problems/problem.h"

namespace coutil {

enum class MaterialKind { cloth, boneStock, busk, eyelets, lace, waistTape, channelTape, binding };
[[nodiscard]] std::string_view keyOf(MaterialKind kind);  // "cloth", "bone_stock", ...

enum class MaterialUnit { metre, piece };

// What the garment takes of one material, without spares.
struct MaterialNeed {
    MaterialKind kind = MaterialKind::cloth;
    std::string detail{};  // layer of a cloth, kind of a bone; may be empty
    double sizeMm = 0;     // width of cloth or tape, length of a rod or busk, hole of an eyelet
    MaterialUnit unit = MaterialUnit::piece;
    double amount = 0;  // metres or pieces

    bool operator==(const MaterialNeed&) const = default;
};

// A line of the list to buy by.
struct MaterialRow {
    MaterialNeed need{};
    double amountToBuy = 0;  // with spares: metres to the next tenth, pieces to the next whole
    std::optional<double> price{};
    std::optional<double> cost{};

    bool operator==(const MaterialRow&) const = default;
};

struct MaterialsList {
    std::vector<MaterialRow> rows{};
    double cost = 0;  // of what has a price
    bool isPriceMissing = false;

    bool operator==(const MaterialsList&) const = default;
};

// What names a material in the price list: "cloth/strength", "bone_stock/spiral_steel 6", "lace".
[[nodiscard]] std::string materialKey(const MaterialNeed& need);

// The list: needs of the same material and size as one row, in the order they came; spares; costs.
// Of one key all sizes have one price. A busk and a lace are bought without spares. Needs of 0 are
// left out. Problems: makingUpOutOfRange ("materials/spare_part" 0 to 10,
// "materials/price_by_key/KEY" from 0).
[[nodiscard]] Outcome<MaterialsList> materialsList(const std::vector<MaterialNeed>& needs,
                                                   const MaterialChoices& choices);

}  // namespace coutil
