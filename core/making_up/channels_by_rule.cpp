#include "core/making_up/eyelets.h"
#include "core/making_up/panel_frame.h"
#include "core/making_up/planned_channel.h"

namespace coutil {
namespace {

using Course = PlannedChannel::Course;

// Cloth between two channels beside each other, for their stitching.
constexpr double kBetweenChannelsMm = 2;

class RulePlan {
  public:
    RulePlan(const Pattern& pattern, const MakingUpChoices& choices)
        : pattern_(pattern), choices_(choices.channels), all_(choices) {}

    std::vector<PlannedChannel> of() {
        for (std::size_t p = 0; p < pattern_.panels.size(); ++p) {
            if (!frameOf(pattern_.panels[p])) continue;
            addFront(p);
            addInside(p);
            addSeamBehind(p);
            addEyelets(p);
        }
        return std::move(plan_);
    }

  private:
    const Pattern& pattern_;
    const ChannelChoices& choices_;
    const MakingUpChoices& all_;
    std::vector<PlannedChannel> plan_;

    [[nodiscard]] double halfMm(const BoneType& bone) const {
        return (bone.widthMm + choices_.clearanceMm) / 2;
    }

    PlannedChannel& add(std::string key, std::size_t panel, bool isOn, const BoneType& bone,
                        Course course, double insetMm) {
        return plan_.emplace_back(PlannedChannel{.key = std::move(key),
                                                 .side = pattern_.panels[panel].side,
                                                 .isOn = isOn,
                                                 .course = course,
                                                 .panel = panel,
                                                 .insetMm = insetMm,
                                                 .bone = bone});
    }

    void addFront(std::size_t p) {
        const Panel& panel = pattern_.panels[p];
        const Edge& edge = panel.edges[frameOf(panel)->front];
        if (edge.name != "centre front") return;
        const BoneType& bone = choices_.frontBone;
        if (edge.role == EdgeRole::fold) {
            add("front", p, choices_.hasFront, bone, Course::fold, 0);
            return;
        }
        const double before =
            edge.role == EdgeRole::opening ? all_.busk.widthMm + kBetweenChannelsMm : 0;
        add("front", p, choices_.hasFront, bone, Course::besideFront, before + halfMm(bone));
    }

    // The panel behind the bust seam is the second; its support stands clear of the seam's own
    // channel, however that is carried.
    void addInside(std::size_t p) {
        const Panel& panel = pattern_.panels[p];
        if (panel.name == "2") {
            const double insetMm = choices_.seamBone.widthMm + choices_.clearanceMm +
                                   kBetweenChannelsMm + halfMm(choices_.bustBone);
            add("bust support", p, choices_.hasBustSupport, choices_.bustBone, Course::besideFront,
                insetMm)
                .topMm = heightOf("under_bust");
        }
        add("panel " + panel.name + " middle", p, choices_.hasPanelMiddles, choices_.panelBone,
            Course::middle, 0);
    }

    [[nodiscard]] std::optional<double> heightOf(std::string_view name) const {
        for (const Level& level : pattern_.levels)
            if (level.name == name) return level.heightMm;
        return std::nullopt;
    }

    void addSeamBehind(std::size_t p) {
        for (std::size_t s = 0; s < pattern_.seams.size(); ++s) {
            const Seam& seam = pattern_.seams[s];
            if (seam.front.panel != p || joinsSides(seam)) continue;
            add("seam " + seam.name, p, choices_.hasSeams, choices_.seamBone, Course::seam, 0)
                .seam = s;
        }
    }

    // Of the centre front of a whole pattern: there the rule of the front holds.
    [[nodiscard]] bool joinsSides(const Seam& seam) const {
        return pattern_.panels[seam.front.panel].side != pattern_.panels[seam.back.panel].side;
    }

    void addEyelets(std::size_t p) {
        const Panel& panel = pattern_.panels[p];
        if (panel.edges[frameOf(panel)->back].role != EdgeRole::opening) return;
        const BonesBesideEyelets at = bonesBesideEyelets(all_.eyelets);
        const auto addOne = [&](const char* key, double insetMm) {
            add(key, p, choices_.hasBesideEyelets, choices_.backBone, Course::besideBack, insetMm);
        };
        addOne("beside eyelets inner", at.innerMm);
        addOne("beside eyelets outer", at.outerMm);
    }
};

}  // namespace

std::vector<PlannedChannel> channelsByRule(const Pattern& pattern, const MakingUpChoices& choices) {
    return RulePlan(pattern, choices).of();
}

}  // namespace coutil
