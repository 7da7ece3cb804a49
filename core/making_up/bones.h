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

// So many bones of one type and length.
struct BoneTotal {
    BoneType type{};
    double lengthMm = 0;
    int count = 0;

    bool operator==(const BoneTotal&) const = default;
};

struct BoneTable {
    std::vector<BoneRow> rows{};      // one per channel, in their order
    std::vector<BoneTotal> totals{};  // by type, longest first

    bool operator==(const BoneTable&) const = default;
};

// What is cut for the channels: each bone is the channel less what stays free at each end (at a
// bound edge never less than the finished binding), rounded down to the step. Problems (warnings,
// subject = key of the channel): boneTooShort (figures value, limit; none is made),
// boneKindTooStiff (figures value = the channel's radius, limit; with its place).
[[nodiscard]] BoneTable boneTable(const Pattern& pattern, const std::vector<Channel>& channels,
                                  const AllowanceStyle& allowance, const MakingUpChoices& choices,
                                  std::vector<Problem>& problems);

}  // namespace coutil
