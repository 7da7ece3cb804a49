#include <algorithm>

#include "core/making_up/planned_channel.h"

namespace coutil {
namespace {

Problem unfit(const ChannelChoice& choice, std::string detail = {}) {
    return {.code = ProblemCode::choiceUnfit,
            .severity = Severity::warning,
            .subject = choice.channel,
            .detail = std::move(detail)};
}

void take(const ChannelChoice& choice, PlannedChannel& channel) {
    channel.isOn = choice.isOn.value_or(channel.isOn);
    channel.bone = choice.bone.value_or(channel.bone);
    if (choice.carrier) channel.carrier = choice.carrier;
    if (choice.bottomMm) channel.bottomMm = choice.bottomMm;
    if (choice.topMm) channel.topMm = choice.topMm;
}

PanelSide otherSide(PanelSide side) {
    return side == PanelSide::left ? PanelSide::right : PanelSide::left;
}

// A choice for one side of a channel that stands for both leaves the other side as it was.
void applyTo(const ChannelChoice& choice, std::vector<PlannedChannel>& plan,
             std::vector<Problem>& problems) {
    bool isFound = false;
    for (std::size_t k = 0; k < plan.size(); ++k) {
        if (plan[k].key != choice.channel) continue;
        const bool isForAll = choice.side == PanelSide::both || choice.side == plan[k].side;
        if (!isForAll && plan[k].side != PanelSide::both) continue;
        if (!isForAll && plan[k].course == PlannedChannel::Course::fold) continue;
        isFound = true;
        if (!isForAll) {
            plan[k].side = choice.side;
            PlannedChannel other = plan[k];
            other.side = otherSide(choice.side);
            plan.insert(plan.begin() + static_cast<std::ptrdiff_t>(k) + 1, std::move(other));
        }
        take(choice, plan[k]);
        if (!isForAll) ++k;
    }
    if (!isFound) problems.push_back(unfit(choice));
}

void addOwn(const Pattern& pattern, const ChannelChoices& choices, const ChannelChoice& choice,
            std::vector<PlannedChannel>& plan, std::vector<Problem>& problems) {
    const auto isTaken = [&](const PlannedChannel& channel) {
        return channel.key == choice.channel &&
               (channel.side == choice.side || channel.side == PanelSide::both ||
                choice.side == PanelSide::both);
    };
    if (std::ranges::any_of(plan, isTaken)) {
        problems.push_back(unfit(choice, choice.channel));
        return;
    }
    bool isFound = false;
    for (std::size_t p = 0; p < pattern.panels.size(); ++p) {
        const Panel& panel = pattern.panels[p];
        if (panel.name != choice.line->panel) continue;
        const bool isOnSide = choice.side == PanelSide::both || panel.side == PanelSide::both ||
                              panel.side == choice.side;
        if (!isOnSide) continue;
        isFound = true;
        PlannedChannel own{.key = choice.channel,
                           .side = panel.side == PanelSide::both ? choice.side : panel.side,
                           .course = PlannedChannel::Course::own,
                           .panel = p,
                           .bone = choices.panelBone,
                           .line = choice.line};
        take(choice, own);
        plan.push_back(std::move(own));
    }
    if (!isFound) problems.push_back(unfit(choice, choice.line->panel));
}

}  // namespace

void applyChoicesByHand(const Pattern& pattern, const ChannelChoices& choices,
                        std::vector<PlannedChannel>& plan, std::vector<Problem>& problems) {
    for (const ChannelChoice& choice : choices.byHand) {
        if (choice.line) {
            addOwn(pattern, choices, choice, plan, problems);
        } else {
            applyTo(choice, plan, problems);
        }
    }
}

}  // namespace coutil
