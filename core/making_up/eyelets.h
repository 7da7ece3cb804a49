#pragma once

#include <vector>

#include "core/making_up/eyelet_choices.h"
#include "core/making_up/opening_edges.h"
#include "core/pattern/pattern.h"
#include "core/problems/problem.h"

namespace coutil {

// One pair of eyelets, left and right at the same height.
struct EyeletPair {
    double positionMm = 0;        // seam position on both laced edges
    Point left = Point::Zero();   // in the frame of the left panel
    Point right = Point::Zero();  // in the frame of the right panel (a half: the same)

    bool operator==(const EyeletPair&) const = default;
};

struct Eyelets {
    std::vector<EyeletPair> pairs{};  // from the bottom to the top
    OpeningEdges edges{};
    double pitchBelowMm = 0;  // as it came out; both the same without a closer pair
    double pitchAboveMm = 0;
    bool hasWaistPair = false;
    double zigzagMm = 0;      // the lace between the eyelets at the lacing gap
    double laceMm = 0;        // the lace to buy: the zig-zag at the opened gap, and both tails
    SharedStretch stretch{};  // says how much longer one of the edges is than the other

    bool operator==(const Eyelets&) const = default;
};

// How far from the laced edge the middles of the two bones beside the eyelets run, mm.
struct BonesBesideEyelets {
    double outerMm = 0;
    double innerMm = 0;
};
[[nodiscard]] BonesBesideEyelets bonesBesideEyelets(const EyeletChoices& choices);

// Seam positions for eyelets on a stretch, bottom to top: first and last `endMm` from its ends; a
// pair `waistPairMm` apart in the middle of the waist mark, and from there up and down equal
// pitches, as near to the one asked for as whole numbers allow. Where less than half a pitch is
// left above or below the pair, and where none is wanted, equal pitches from end to end. Empty
// where not even two fit a pitch apart.
[[nodiscard]] std::vector<double> eyeletPositionsMm(const SharedStretch& stretch,
                                                    const EyeletChoices& choices);

// Length of a lace that runs crosswise from the lowest pair to the highest, in two strands that
// change sides between neighbouring pairs and start across the lowest one, mm:
// w1 + 2 sum over i of sqrt(((w_i + w_i+1) / 2)^2 + d_i^2), w_i between the eyelets of pair i, d_i
// between neighbouring pairs. Exact for edges that are straight and stand up; plane geometry.
[[nodiscard]] double zigzagLengthMm(const std::vector<double>& positionsMm,
                                    const std::vector<double>& widthsMm);

// The eyelets of a pattern laced at the back: as many, and at the same heights, on both sides, also
// where the two edges differ in length (then on what they share). The gap between two levels is
// interpolated. A pattern without a back opening gets no pairs.
// Problems: eyeletsDoNotFit (value: the stretch, limit: what two eyelets need), eyeletRoomTooNarrow
// (a bone beside would reach over the edge, the eyelet, or the panel's other edge; value: the room,
// limit: what is needed, place), makingUpOutOfRange (subject "eyelets/...").
[[nodiscard]] Outcome<Eyelets> eyeletsFor(const Pattern& pattern, const EyeletChoices& choices);

}  // namespace coutil
