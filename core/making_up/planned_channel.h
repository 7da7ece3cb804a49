#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/making_up/channel.h"

namespace coutil {

// A channel that a rule or the maker wants, before its line is drawn.
struct PlannedChannel {
    enum class Course { seam, besideFront, besideBack, middle, own, fold };

    std::string key;
    PanelSide side = PanelSide::both;
    bool isOn = true;
    Course course = Course::seam;
    std::size_t panel = 0;
    std::optional<std::size_t> seam{};  // index
    double insetMm = 0;                 // from the edge to the middle of the channel
    BoneType bone{};
    std::optional<ChannelCarrier> carrier{};  // asked for by hand
    std::optional<double> bottomMm{};
    std::optional<double> topMm{};
    std::optional<ChannelLine> line{};
};

// What the rules give for a pattern, those that are off included (they can be switched on by hand),
// in the order of findChannels().
[[nodiscard]] std::vector<PlannedChannel> channelsByRule(const Pattern& pattern,
                                                         const MakingUpChoices& choices);

// The plan with the choices by hand; one for a single side parts a channel of both. Problems:
// choiceUnfit.
void applyChoicesByHand(const Pattern& pattern, const ChannelChoices& choices,
                        std::vector<PlannedChannel>& plan, std::vector<Problem>& problems);

}  // namespace coutil
