#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/making_up/bone_type.h"
#include "core/pattern/pattern.h"

namespace coutil {

// When a seam is straight enough for its own allowance to be the channel: no stretch of it leaves
// its chord by the error or more, and no bend is as tight as the radius (common practice, no
// source). A shorter seam is looked at whole.
struct StraightSeamRule {
    double chordErrorMm = 3;
    double stretchMm = 100;
    double radiusMm = 250;
    bool operator==(const StraightSeamRule&) const = default;
};

// What makes the tunnel: the seam's own allowance folded over, or a tape sewn on.
enum class ChannelCarrier { ownAllowance, tape };
[[nodiscard]] std::string_view keyOf(ChannelCarrier carrier);  // "own_allowance", "tape"

// A straight line of the maker's own through a panel, mm along the bottom and the top edge from
// their front corners (as SplitPanel has it).
struct ChannelLine {
    std::string panel;
    double bottomAlongMm = 0;
    double topAlongMm = 0;
    bool operator==(const ChannelLine&) const = default;
};

// What the maker decides by hand about one channel; whatever is left out follows the rules.
struct ChannelChoice {
    // The key of a channel that the rules make ("seam 2-3", "panel 3 middle", "bust support",
    // "beside eyelets outer", "beside eyelets inner", "front"), or her own name where `line` is
    // given.
    std::string channel;
    PanelSide side = PanelSide::both;
    std::optional<bool> isOn{};
    std::optional<BoneType> bone{};
    std::optional<ChannelCarrier> carrier{};
    std::optional<double> bottomMm{};  // where it begins and ends, seam position or mm over the
    std::optional<double> topMm{};     // waist along its line
    std::optional<ChannelLine> line{};
    bool operator==(const ChannelChoice&) const = default;
};

// Where channels run. The rules follow the style: a laced back has bones on both sides of its
// eyelets, a front has one behind its edge, or in its middle where it is a fold.
struct ChannelChoices {
    double clearanceMm = 2;  // channel = bone + clearance (read values +1.6 to +3.2)
    StraightSeamRule straightSeam{};
    bool hasSeams = true;
    bool hasPanelMiddles = false;
    bool hasBustSupport = false;  // beside the bust seam, under the bust only
    bool hasBesideEyelets = true;
    bool hasFront = true;
    BoneType seamBone{BoneKind::spiralSteel, 6};
    BoneType panelBone{BoneKind::spiralSteel, 6};
    BoneType bustBone{BoneKind::spiralSteel, 6};
    BoneType backBone{BoneKind::flatSteel, 7};
    BoneType frontBone{BoneKind::flatSteel, 7};
    // An allowance folded to a channel: what is turned in along its free edge, and to what the
    // other one, that lies inside, is trimmed (common practice, no source).
    double turnedInMm = 6;
    double trimmedMm = 5;
    std::vector<ChannelChoice> byHand{};
    bool operator==(const ChannelChoices&) const = default;
};

}  // namespace coutil
