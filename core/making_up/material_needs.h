#pragma once

#include "core/making_up/binding.h"
#include "core/making_up/bone_plans.h"
#include "core/making_up/busk.h"
#include "core/making_up/cloth_estimate.h"
#include "core/making_up/eyelets.h"
#include "core/making_up/materials.h"
#include "core/making_up/waist_tape.h"

namespace coutil {

// What each part of the making-up takes. Tapes, strips and lace in metres; rods, reels, eyelets and
// busk in pieces.
[[nodiscard]] std::vector<MaterialNeed> needsOf(const Eyelets& eyelets,
                                                const EyeletChoices& choices);
[[nodiscard]] MaterialNeed needOf(const Busk& busk);
[[nodiscard]] MaterialNeed needOf(const Binding& binding);
[[nodiscard]] std::vector<MaterialNeed> needsOf(const std::vector<TapeTotal>& tapes,
                                                MaterialKind kind);
[[nodiscard]] MaterialNeed needOf(const ClothEstimate& estimate, const std::string& layer);
// One need for every type of bone and stock length, or ready cut length.
[[nodiscard]] std::vector<MaterialNeed> needsOf(const BonesToBuy& bones);

}  // namespace coutil
