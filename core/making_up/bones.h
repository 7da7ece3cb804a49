#pragma once

#include <string>
#include <vector>

#include "core/making_up/bone_choices.h"
#include "core/making_up/channel.h"

namespace coutil {

// One row of the bone table: the bones of one channel.
struct BoneRow {
    std::string channel;  // key
    PanelSide side = PanelSide::both;
    BoneType type{};
    double channelLengthMm = 0;  // along its line, sewing line to sewing line
    double lengthMm = 0;         // of the bone; 0: too short, none is made
    int count = 1;               // 2 where the half stands for both sides

    bool operator==(const BoneRow&) const = default;
};

}  // namespace coutil
