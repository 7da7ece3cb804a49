#include <algorithm>
#include <cmath>
#include <utility>

#include "core/making_up/panel_frame.h"
#include "core/making_up/planned_channel.h"
#include "core/making_up/room_for_channel.h"
#include "core/making_up/seam_carrier.h"

namespace coutil {
namespace {

using Course = PlannedChannel::Course;

std::optional<Path> ownLine(const Panel& panel, const PanelFrame& frame, const ChannelLine& line) {
    const Path& bottom = panel.edges[frame.bottom].path;
    const Path top = reversed(panel.edges[frame.top].path);
    if (line.bottomAlongMm < 0 || line.bottomAlongMm > lengthMm(bottom)) return std::nullopt;
    if (line.topAlongMm < 0 || line.topAlongMm > lengthMm(top)) return std::nullopt;
    return straightPath(pointAtLength(bottom, line.bottomAlongMm),
                        pointAtLength(top, line.topAlongMm));
}

std::optional<Path> middleLine(const Panel& panel, const PanelFrame& frame) {
    const Path& bottom = panel.edges[frame.bottom].path;
    const Path& top = panel.edges[frame.top].path;
    return straightPath(pointAtLength(bottom, lengthMm(bottom) / 2),
                        pointAtLength(top, lengthMm(top) / 2));
}

class ChannelMaker {
  public:
    ChannelMaker(const Pattern& pattern, const Style& style, const ChannelChoices& choices)
        : pattern_(pattern),
          style_(style),
          choices_(choices),
          straightness_(straightnessOf(pattern, choices.straightSeam)) {}

    // Nothing, and a problem, where there is no room.
    std::optional<Channel> made(const PlannedChannel& plan, std::vector<Problem>& problems) {
        Channel channel{.key = plan.key, .side = plan.side, .panel = plan.panel, .bone = plan.bone};
        channel.widthMm = plan.bone.widthMm + choices_.clearanceMm;
        const auto line = plan.seam ? seamLine(plan, channel, problems) : lineInside(plan, channel);
        if (!line) return refused(channel, problems);
        channel.line = *line;
        if (!plan.seam || channel.carrier == ChannelCarrier::ownAllowance)
            channel.waistAtMm = waistAlongMm(*line);
        if (!cutByHand(plan, channel, problems)) return std::nullopt;
        if (!hasRoomFor(pattern_, channel)) return refused(channel, problems);
        return channel;
    }

  private:
    const Pattern& pattern_;
    const Style& style_;
    const ChannelChoices& choices_;
    std::vector<SeamStraightness> straightness_;

    [[nodiscard]] std::optional<Channel> refused(const Channel& channel,
                                                 std::vector<Problem>& problems) const {
        problems.push_back({.code = ProblemCode::channelImpossible,
                            .severity = Severity::warning,
                            .subject = channel.key,
                            .panel = pattern_.panels[channel.panel].name});
        return std::nullopt;
    }

    [[nodiscard]] std::optional<Path> seamLine(const PlannedChannel& plan, Channel& channel,
                                               std::vector<Problem>& problems) const {
        const Seam& seam = pattern_.seams[*plan.seam];
        const SeamCarrier found =
            carrierOf(pattern_, seam, straightness_[*plan.seam], plan.carrier);
        channel.seam = seam.name;
        channel.carrier = found.carrier;
        channel.panel = found.on.panel;
        const Edge& edge = edgeAt(pattern_, found.on);
        channel.edge = edge.name;
        appendCarrierProblems(pattern_, style_, choices_, channel, straightness_[*plan.seam],
                              problems);
        if (found.carrier == ChannelCarrier::tape) {
            channel.waistAtMm = waistFromBelowMm(edge);
            return upwardsOf(edge);
        }
        return cutBeside(channel.panel, found.on.edge, channel.widthMm / 2);
    }

    [[nodiscard]] std::optional<Path> cutBeside(std::size_t panel, std::size_t edge,
                                                double insetMm) const {
        const auto frame = frameOf(pattern_.panels[panel]);
        if (!frame) return std::nullopt;
        const Panel& carrying = pattern_.panels[panel];
        const auto line =
            besideLine(upwardsOf(carrying.edges[edge]), edge == frame->front ? insetMm : -insetMm);
        if (!line) return std::nullopt;
        return toRims(carrying, *frame, *line, {});
    }

    [[nodiscard]] std::optional<Path> lineInside(const PlannedChannel& plan,
                                                 Channel& channel) const {
        const Panel& panel = pattern_.panels[plan.panel];
        const auto frame = frameOf(panel);
        if (!frame) return std::nullopt;
        channel.carrier = plan.carrier.value_or(ChannelCarrier::tape);
        const auto beside = [&](std::size_t edge) {
            channel.edge = panel.edges[edge].name;
            return cutBeside(plan.panel, edge, plan.insetMm);
        };
        switch (plan.course) {
            case Course::besideFront:
                return beside(frame->front);
            case Course::besideBack:
                return beside(frame->back);
            case Course::fold:
                channel.isOnFold = true;
                channel.edge = panel.edges[frame->front].name;
                return upwardsOf(panel.edges[frame->front]);
            case Course::own:
                return ownLine(panel, *frame, *plan.line);
            default:
                return middleLine(panel, *frame);
        }
    }

    // Ends given by hand cut the line off where they lie inside it.
    [[nodiscard]] bool cutByHand(const PlannedChannel& plan, Channel& channel,
                                 std::vector<Problem>& problems) const {
        const double wholeMm = lengthMm(channel.line);
        double fromMm = 0;
        double toMm = wholeMm;
        if (plan.bottomMm && channel.waistAtMm + *plan.bottomMm > 0) {
            fromMm = channel.waistAtMm + *plan.bottomMm;
            channel.endsAtBottomEdge = false;
        }
        if (plan.topMm && channel.waistAtMm + *plan.topMm < wholeMm) {
            toMm = channel.waistAtMm + *plan.topMm;
            channel.endsAtTopEdge = false;
        }
        if (toMm - fromMm < 2 * channel.widthMm) {
            problems.push_back({.code = ProblemCode::channelImpossible,
                                .severity = Severity::warning,
                                .subject = channel.key,
                                .panel = pattern_.panels[channel.panel].name,
                                .figures = {{"value", std::max(0.0, toMm - fromMm)},
                                            {"limit", 2 * channel.widthMm}}});
            return false;
        }
        if (fromMm > 0 || toMm < wholeMm) {
            channel.line = betweenLengths(channel.line, fromMm, toMm);
            channel.waistAtMm -= fromMm;
        }
        return true;
    }
};

}  // namespace

Outcome<std::vector<Channel>> findChannels(const Pattern& pattern, const Style& style,
                                           const MakingUpChoices& choices) {
    std::vector<Problem> problems;
    std::vector<PlannedChannel> plan = channelsByRule(pattern, choices);
    applyChoicesByHand(pattern, choices.channels, plan, problems);
    ChannelMaker maker(pattern, style, choices.channels);
    std::vector<Channel> channels;
    for (const PlannedChannel& each : plan) {
        if (!each.isOn) continue;
        if (auto channel = maker.made(each, problems)) channels.push_back(std::move(*channel));
    }
    return {std::move(channels), std::move(problems)};
}

}  // namespace coutil
