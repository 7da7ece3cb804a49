#include "core/making_up/seam_carrier.h"

#include <algorithm>
#include <map>
#include <string>

#include "core/pattern/bows.h"

namespace coutil {
namespace {

constexpr double kClearlyStraighterMm = 0.5;

double chordErrorMm(const Edge& edge) {
    double worst = 0;
    for (const Bow& bow : bowsOf(edge.path, 100)) worst = std::max(worst, bow.chordErrorMm);
    return worst;
}

std::string nameIn(const Pattern& pattern, const EdgeRef& ref) {
    return pattern.panels[ref.panel].name + "/" + edgeAt(pattern, ref).name;
}

const Seam* seamOf(const Pattern& pattern, const Channel& channel) {
    for (const Seam& seam : pattern.seams) {
        if (seam.name == channel.seam &&
            (seam.front.panel == channel.panel || seam.back.panel == channel.panel))
            return &seam;
    }
    return nullptr;
}

}  // namespace

SeamCarrier carrierOf(const Pattern& pattern, const Seam& seam,
                      const SeamStraightness& straightness,
                      const std::optional<ChannelCarrier>& wanted) {
    const auto byRule =
        straightness.isNearlyStraight ? ChannelCarrier::ownAllowance : ChannelCarrier::tape;
    const ChannelCarrier carrier = wanted.value_or(byRule);
    if (carrier == ChannelCarrier::tape) return {carrier, seam.front, seam.back};
    const double frontMm = chordErrorMm(edgeAt(pattern, seam.front));
    const double backMm = chordErrorMm(edgeAt(pattern, seam.back));
    if (backMm > frontMm + kClearlyStraighterMm) return {carrier, seam.front, seam.back};
    return {carrier, seam.back, seam.front};
}

std::optional<FoldedEdges> foldedEdgesOf(const Pattern& pattern, const Channel& channel) {
    if (channel.carrier != ChannelCarrier::ownAllowance) return std::nullopt;
    const Seam* seam = seamOf(pattern, channel);
    if (seam == nullptr) return std::nullopt;
    if (seam->front.panel == channel.panel) return FoldedEdges{seam->back, seam->front};
    return FoldedEdges{seam->front, seam->back};
}

void appendCarrierProblems(const Pattern& pattern, const Style& style,
                           const ChannelChoices& choices, const Channel& channel,
                           const SeamStraightness& straightness, std::vector<Problem>& problems) {
    const auto folded = foldedEdgesOf(pattern, channel);
    if (!folded) return;
    if (!straightness.isNearlyStraight) {
        problems.push_back({.code = ProblemCode::seamTooCurvedForBone,
                            .severity = Severity::warning,
                            .subject = channel.key,
                            .panel = straightness.chordErrorPanel,
                            .figures = {{"value", straightness.chordErrorMm},
                                        {"limit", choices.straightSeam.chordErrorMm},
                                        {"position", straightness.chordErrorAtMm}}});
    }
    const auto byHand = style.allowance.byEdgeMm.find(nameIn(pattern, folded->over));
    const double neededMm = channel.widthMm + choices.turnedInMm;
    if (byHand == style.allowance.byEdgeMm.end() || byHand->second >= neededMm) return;
    problems.push_back({.code = ProblemCode::allowanceTooNarrow,
                        .severity = Severity::warning,
                        .subject = byHand->first,
                        .panel = pattern.panels[folded->over.panel].name,
                        .figures = {{"value", byHand->second}, {"limit", neededMm}}});
}

AllowanceStyle allowanceWithChannels(const AllowanceStyle& allowance, const Pattern& pattern,
                                     const std::vector<Channel>& channels,
                                     const ChannelChoices& choices) {
    std::map<std::string, double> wide;
    std::map<std::string, double> trimmed;
    for (const Channel& channel : channels) {
        const auto folded = foldedEdgesOf(pattern, channel);
        if (!folded) continue;
        double& widthMm = wide[nameIn(pattern, folded->over)];
        widthMm = std::max(widthMm, channel.widthMm + choices.turnedInMm);
        trimmed[nameIn(pattern, folded->inside)] = choices.trimmedMm;
    }
    AllowanceStyle with = allowance;
    // A width the maker gave by hand stays; where left and right fold differently both are wide.
    for (const auto& [edge, widthMm] : wide) {
        const auto byHand = allowance.byEdgeMm.find(edge);
        with.byEdgeMm[edge] = byHand == allowance.byEdgeMm.end()
                                  ? std::max(widthMm, allowance.seamMm)
                                  : byHand->second;
    }
    for (const auto& [edge, widthMm] : trimmed) with.byEdgeMm.try_emplace(edge, widthMm);
    return with;
}

}  // namespace coutil
