#include "core/making_up/channel.h"
#include "core/making_up/panel_frame.h"

namespace coutil {
namespace {

// The edge of a panel that lies at a seam's tape; nothing for other channels and other panels.
const Edge* tapedEdgeOn(const Pattern& pattern, const Channel& channel, std::size_t panel) {
    if (channel.seam.empty() || channel.carrier != ChannelCarrier::tape) return nullptr;
    for (const Seam& seam : pattern.seams) {
        if (seam.name != channel.seam || seam.front.panel != channel.panel) continue;
        if (seam.front.panel == panel) return &edgeAt(pattern, seam.front);
        if (seam.back.panel == panel) return &edgeAt(pattern, seam.back);
    }
    return nullptr;
}

OpenEnds endsOf(const Channel& channel) {
    return {channel.endsAtBottomEdge, channel.endsAtTopEdge};
}

// The middle of the channel on either panel of its seam: a seam position is the same on both.
Path middleOnEdge(const Edge& edge, const Channel& channel) {
    const Path upwards = upwardsOf(edge);
    const double startMm = waistFromBelowMm(edge) - channel.waistAtMm;
    const double endMm = startMm + lengthMm(channel.line);
    return betweenLengths(upwards, channel.endsAtBottomEdge ? 0 : startMm,
                          channel.endsAtTopEdge ? lengthMm(upwards) : endMm);
}

void appendBeside(const Panel& panel, const PanelFrame& frame, const Path& middle, double toRightMm,
                  const OpenEnds& ends, std::vector<Path>& lines) {
    const auto line = besideLine(middle, toRightMm);
    if (!line) return;
    if (auto cut = toRims(panel, frame, *line, ends)) lines.push_back(std::move(*cut));
}

}  // namespace

std::vector<Path> stitchLinesOn(const Pattern& pattern, const Channel& channel, std::size_t panel) {
    const Panel& carrying = pattern.panels[panel];
    const auto frame = frameOf(carrying);
    if (!frame) return {};
    std::vector<Path> lines;
    const double halfMm = channel.widthMm / 2;
    const Edge* front = &carrying.edges[frame->front];
    if (const Edge* taped = tapedEdgeOn(pattern, channel, panel)) {
        appendBeside(carrying, *frame, middleOnEdge(*taped, channel),
                     taped == front ? halfMm : -halfMm, endsOf(channel), lines);
        return lines;
    }
    if (panel != channel.panel) return {};
    // One side of a folded allowance is its seam; half of a channel on the fold is on the other
    // half of the panel.
    const bool isAtFront = channel.edge == front->name;
    const bool hasOneSide = channel.isOnFold || !channel.seam.empty();
    if (!hasOneSide || !isAtFront)
        appendBeside(carrying, *frame, channel.line, -halfMm, endsOf(channel), lines);
    if (!hasOneSide || isAtFront)
        appendBeside(carrying, *frame, channel.line, halfMm, endsOf(channel), lines);
    return lines;
}

}  // namespace coutil
