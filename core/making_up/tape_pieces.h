#pragma once

#include <vector>

#include "core/making_up/channel.h"

namespace coutil {

// Pieces of tape cut alike.
struct TapePiece {
    double widthMm = 0;
    double finishedMm = 0;
    double cutMm = 0;  // with its turnings
    int count = 1;

    bool operator==(const TapePiece&) const = default;
};

// Tape of one width, all pieces together.
struct TapeTotal {
    double widthMm = 0;
    double cutMm = 0;
    int pieces = 0;

    bool operator==(const TapeTotal&) const = default;
};

// Totals by width, narrowest first. Widths within kSamePointMm are one.
[[nodiscard]] std::vector<TapeTotal> tapesByWidth(std::vector<TapePiece> pieces);

// The tapes of the channels that are not a seam's own allowance: as wide as the channel (the tape
// has its own edges beside), as long as its line from edge line to edge line; at an edge that is
// not bound `turningMm` more, to be caught in the turned edge. Two where the half stands for both
// sides.
[[nodiscard]] std::vector<TapePiece> channelTapes(const std::vector<Channel>& channels,
                                                  bool isTopBound, bool isBottomBound,
                                                  double turningMm);

}  // namespace coutil
