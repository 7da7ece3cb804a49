#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/making_up/channel_choices.h"
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

}  // namespace coutil
