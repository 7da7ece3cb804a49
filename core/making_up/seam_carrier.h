#pragma once

#include <optional>
#include <vector>

#include "core/making_up/channel.h"

namespace coutil {

// What carries a seam's channel, and on which panel. A folded allowance lies on the panel whose
// edge is the straighter one, where they differ by more than 0.5 mm in chord error; else on the
// panel behind: seams pressed towards the back (common practice, no source). Tape is told of the
// panel in front; it lies in the middle of the seam.
struct SeamCarrier {
    ChannelCarrier carrier = ChannelCarrier::tape;
    EdgeRef on;     // the edge of the panel it lies on
    EdgeRef other;  // that of the panel whose allowance is folded over
};
[[nodiscard]] SeamCarrier carrierOf(const Pattern& pattern, const Seam& seam,
                                    const SeamStraightness& straightness,
                                    const std::optional<ChannelCarrier>& wanted);

// seamTooCurvedForBone, allowanceTooNarrow.
void appendCarrierProblems(const Pattern& pattern, const Style& style,
                           const ChannelChoices& choices, const Channel& channel,
                           const SeamStraightness& straightness, std::vector<Problem>& problems);

// The edge whose allowance is folded over a channel, and the one that lies inside it; nothing for a
// channel on tape.
struct FoldedEdges {
    EdgeRef over;
    EdgeRef inside;
};
[[nodiscard]] std::optional<FoldedEdges> foldedEdgesOf(const Pattern& pattern,
                                                       const Channel& channel);

}  // namespace coutil
