#include "core/making_up/tape_pieces.h"

#include <algorithm>

#include "core/geometry/tolerances.h"

namespace coutil {

std::vector<TapeTotal> tapesByWidth(std::vector<TapePiece> pieces) {
    std::ranges::stable_sort(pieces, {}, &TapePiece::widthMm);
    std::vector<TapeTotal> totals;
    for (const TapePiece& piece : pieces) {
        if (totals.empty() || piece.widthMm > totals.back().widthMm + tolerance::kSamePointMm)
            totals.push_back({piece.widthMm, 0, 0});
        totals.back().cutMm += piece.count * piece.cutMm;
        totals.back().pieces += piece.count;
    }
    return totals;
}

std::vector<TapePiece> channelTapes(const std::vector<Channel>& channels, bool isTopBound,
                                    bool isBottomBound, double turningMm) {
    std::vector<TapePiece> pieces;
    for (const Channel& channel : channels) {
        if (channel.carrier != ChannelCarrier::tape || channel.line.isEmpty()) continue;
        const double finishedMm = lengthMm(channel.line);
        double cutMm = finishedMm;
        if (channel.endsAtTopEdge && !isTopBound) cutMm += turningMm;
        if (channel.endsAtBottomEdge && !isBottomBound) cutMm += turningMm;
        pieces.push_back(
            {channel.widthMm, finishedMm, cutMm, channel.side == PanelSide::both ? 2 : 1});
    }
    return pieces;
}

}  // namespace coutil
