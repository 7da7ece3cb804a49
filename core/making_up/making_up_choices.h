#pragma once

#include <vector>

#include "core/making_up/bone_choices.h"
#include "core/making_up/busk_choices.h"
#include "core/making_up/channel_choices.h"
#include "core/making_up/eyelet_choices.h"
#include "core/making_up/layer.h"
#include "core/making_up/material_choices.h"
#include "core/making_up/tape_choices.h"

namespace coutil {

// How a garment is made up: the maker's choices, with a sound default each. Not ink: they may
// change after a revision is confirmed.
struct MakingUpChoices {
    ChannelChoices channels{};
    BoneChoices bones{};
    EyeletChoices eyelets{};
    BuskChoices busk{};
    WaistTapeChoices waistTape{};
    BindingChoices binding{};
    std::vector<Layer> layers = usualLayers();
    MaterialChoices materials{};

    bool operator==(const MakingUpChoices&) const = default;
};

}  // namespace coutil
