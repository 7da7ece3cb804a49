#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/making_up/channel.h"
#include "core/pattern/pattern.h"

namespace coutil {

enum class SewingStepKind {
    cutOut,        // every layer
    markLines,     // sewing lines, waist marks, channels, numbers
    setBusk,       // into the front edges
    turnFront,     // front edges turned in, where they open without a busk
    joinSeam,      // `seam`
    catchTape,     // the waist tape
    foldChannels,  // `channels` in the seams' own allowances
    sewTapes,      // `channels` of tape
    turnBack,      // back edges turned in, and the channels beside the eyelets stitched
    setEyelets,
    bindBottom,  // or turn it in
    turnBottom,
    putBones,
    bindTop,
    turnTop,
    lace
};
[[nodiscard]] std::string_view keyOf(SewingStepKind kind);  // "cut_out", "mark_lines", ...

// One step of making up, and what to look at for it.
struct SewingStep {
    SewingStepKind kind = SewingStepKind::cutOut;
    std::string seam{};
    PanelSide side = PanelSide::both;     // of seam and channels; both: on both alike
    std::vector<std::size_t> channels{};  // which of the channels given

    bool operator==(const SewingStep&) const = default;
};

// What there is besides the pattern and its channels.
struct SewingParts {
    bool hasBusk = false;
    bool hasEyelets = false;
    bool hasWaistTape = false;
    bool isTopBound = true;
    bool isBottomBound = true;
};

// The order of work of a boned bodice of one set of panels (common practice, no source): front
// edges, seams from front to back and the centre front seam after them, waist tape, channels, back
// edges, eyelets, lower edge, bones, upper edge. Seams and channels come as they lie in the
// pattern; of a whole pattern a seam is one step for both sides. Every seam is joined once; every
// channel is made in one step.
[[nodiscard]] std::vector<SewingStep> sewingSteps(const Pattern& pattern,
                                                  const std::vector<Channel>& channels,
                                                  const SewingParts& parts);

}  // namespace coutil
