#include "core/making_up/sewing_steps.h"

#include <algorithm>
#include <array>

#include "core/making_up/opening_edges.h"

namespace coutil {

namespace {

constexpr std::string_view kCentreFront = "centre front";
constexpr std::string_view kCentreBack = "centre back";

// Names of the seams that join panels, each once, front to back; those in the middle of the body
// after the others, when both halves are done.
std::vector<std::string> seamsInOrder(const Pattern& pattern) {
    std::vector<std::string> names;
    std::vector<std::string> middle;
    const auto add = [](std::vector<std::string>& to, const std::string& name) {
        if (std::ranges::find(to, name) == to.end()) to.push_back(name);
    };
    for (const Panel& panel : pattern.panels) {
        for (const Edge& edge : panel.edges) {
            const bool isMiddle = edge.name == kCentreFront || edge.name == kCentreBack;
            if (isMiddle && edge.role == EdgeRole::seam) add(middle, edge.name);
        }
    }
    for (const Seam& seam : pattern.seams) {
        if (std::ranges::find(middle, seam.name) == middle.end()) add(names, seam.name);
    }
    names.insert(names.end(), middle.begin(), middle.end());
    return names;
}

class StepList {
  public:
    StepList(const Pattern& pattern, const std::vector<Channel>& channels, const SewingParts& parts)
        : pattern_(pattern), channels_(channels), parts_(parts) {}

    std::vector<SewingStep> made() {
        add(SewingStepKind::cutOut);
        add(SewingStepKind::markLines);
        if (frontOpening(pattern_))
            add(parts_.hasBusk ? SewingStepKind::setBusk : SewingStepKind::turnFront);
        for (const std::string& seam : seamsInOrder(pattern_))
            steps_.push_back({SewingStepKind::joinSeam, seam, PanelSide::both, {}});
        if (parts_.hasWaistTape) add(SewingStepKind::catchTape);
        addChannels();
        if (backOpening(pattern_)) addBack();
        add(parts_.isBottomBound ? SewingStepKind::bindBottom : SewingStepKind::turnBottom);
        if (!channels_.empty()) add(SewingStepKind::putBones);
        add(parts_.isTopBound ? SewingStepKind::bindTop : SewingStepKind::turnTop);
        if (parts_.hasEyelets) add(SewingStepKind::lace);
        return std::move(steps_);
    }

  private:
    void add(SewingStepKind kind) { steps_.push_back({kind, {}, PanelSide::both, {}}); }

    // Beside the eyelets: stitched when the back edge is turned in.
    [[nodiscard]] bool isAtBackEdge(const Channel& channel) const {
        return backOpening(pattern_).has_value() && channel.key.starts_with("beside eyelets");
    }

    template <class Claim>
    [[nodiscard]] std::vector<std::size_t> channelsThat(const Claim& claim) const {
        std::vector<std::size_t> found;
        for (std::size_t i = 0; i < channels_.size(); ++i)
            if (claim(channels_[i])) found.push_back(i);
        return found;
    }

    void addChannels() {
        const auto carriedBy = [this](ChannelCarrier carrier) {
            return channelsThat([&](const Channel& each) {
                return each.carrier == carrier && !isAtBackEdge(each);
            });
        };
        for (const auto& [kind, found] :
             {std::pair{SewingStepKind::foldChannels, carriedBy(ChannelCarrier::ownAllowance)},
              std::pair{SewingStepKind::sewTapes, carriedBy(ChannelCarrier::tape)}}) {
            if (!found.empty()) steps_.push_back({kind, {}, PanelSide::both, found});
        }
    }

    void addBack() {
        auto found = channelsThat([this](const Channel& each) { return isAtBackEdge(each); });
        steps_.push_back({SewingStepKind::turnBack, {}, PanelSide::both, std::move(found)});
        if (parts_.hasEyelets) add(SewingStepKind::setEyelets);
    }

    const Pattern& pattern_;
    const std::vector<Channel>& channels_;
    const SewingParts& parts_;
    std::vector<SewingStep> steps_;
};

}  // namespace

std::string_view keyOf(SewingStepKind kind) {
    static constexpr std::array<std::string_view, 16> kKeys{
        "cut_out",       "mark_lines", "set_busk",  "turn_front",  "join_seam",   "catch_tape",
        "fold_channels", "sew_tapes",  "turn_back", "set_eyelets", "bind_bottom", "turn_bottom",
        "put_bones",     "bind_top",   "turn_top",  "lace"};
    return kKeys[static_cast<std::size_t>(kind)];
}

std::vector<SewingStep> sewingSteps(const Pattern& pattern, const std::vector<Channel>& channels,
                                    const SewingParts& parts) {
    return StepList(pattern, channels, parts).made();
}

}  // namespace coutil
