#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/block/style.h"
#include "core/making_up/making_up_choices.h"
#include "core/pattern/pattern.h"
#include "core/problems/problem.h"

namespace coutil {

// Where one bone runs.
struct Channel {
    std::string key;  // as in ChannelChoice; unique on its side
    PanelSide side = PanelSide::both;
    std::string seam{};     // the seam it follows; empty where it runs inside a panel
    std::size_t panel = 0;  // the panel it is drawn on: of a seam the one whose allowance is folded
                            // or that the tape is sewn to
    Path line{};            // middle of the channel in that panel's frame, bottom to top, from edge
                            // line to edge line (or to the ends given by hand)
    double waistAtMm = 0;   // along the line from its start to the waist (below 0: starts above it)
    double widthMm = 0;     // bone and clearance
    ChannelCarrier carrier = ChannelCarrier::tape;
    BoneType bone{};
    bool endsAtBottomEdge = true;  // false: ends inside, by rule or by hand
    bool endsAtTopEdge = true;
    std::string edge{};     // name of the edge of that panel it follows; empty: of none
    bool isOnFold = false;  // in the middle of a panel cut on the fold: there is one only

    bool operator==(const Channel&) const = default;
};

// How straight a seam is: the worst of both its edges.
struct SeamStraightness {
    std::string seam;
    PanelSide side = PanelSide::both;
    double chordErrorMm = 0;    // the most that a stretch leaves its chord, and where
    double chordErrorAtMm = 0;  // seam position
    std::string chordErrorPanel{};
    double radiusMm = 0;  // of the tightest bend (infinity where straight), and where
    double radiusAtMm = 0;
    std::string radiusPanel{};
    bool isNearlyStraight = true;

    bool operator==(const SeamStraightness&) const = default;
};

// How straight every seam of the pattern is, in their order. Error of the chord error below
// 0.02 mm.
[[nodiscard]] std::vector<SeamStraightness> straightnessOf(const Pattern& pattern,
                                                           const StraightSeamRule& rule);

// All channels by rule and by hand, panel by panel; of a whole pattern those of each side. Rules in
// DEVELOPERS.md ("Making-up"). Problems, all warnings, subject = key of the channel:
// choiceUnfit (a choice by hand names what this pattern does not have), channelImpossible (no room
// in its panel: left out), seamTooCurvedForBone (the maker wants the own allowance of a seam that
// is too curved), allowanceTooNarrow (she gave the edge a width too small for its channel).
[[nodiscard]] Outcome<std::vector<Channel>> findChannels(const Pattern& pattern, const Style& style,
                                                         const MakingUpChoices& choices);

// The lines a channel is stitched along on one panel of the pattern, upwards, in its frame: both
// sides of one inside the panel; of a seam's tape, which lies in the middle of the seam, one on
// each of its panels; of a seam's folded allowance one, on the panel it is folded to (the other
// side is the seam itself). None on panels it does not touch.
[[nodiscard]] std::vector<Path> stitchLinesOn(const Pattern& pattern, const Channel& channel,
                                              std::size_t panel);

// The allowances with what the channels ask for: where a seam's own allowance is the channel, that
// of the other panel is folded over it and made wide enough (channel and turning), and that of the
// panel it is folded to, which lies inside, is trimmed. What the style says for an edge by itself
// is never made narrower.
[[nodiscard]] AllowanceStyle allowanceWithChannels(const AllowanceStyle& allowance,
                                                   const Pattern& pattern,
                                                   const std::vector<Channel>& channels,
                                                   const ChannelChoices& choices);

}  // namespace coutil
