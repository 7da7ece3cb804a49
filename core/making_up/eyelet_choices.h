#pragma once

namespace coutil {

// The maker's choices for lacing. Common practice for all figures; the tail and the opened gap are
// ours.
struct EyeletChoices {
    double pitchMm = 22;
    double endMm = 12;         // first and last eyelet from the finished top and bottom
    double waistPairMm = 12;   // the two eyelets at the waist are this near; 0: no closer pair
    double columnMm = 12;      // from the laced edge to the middle of the eyelets
    double boneSpaceMm = 7;    // from the middle of the eyelets to the middle of a bone beside
    double boneChannelMm = 9;  // width of the channels of those bones
    double diameterMm = 5;     // of the hole
    double openedGapMm = 200;  // how far the lacing opens to get in
    double tailMm = 300;       // of each lace end, to pull and tie

    bool operator==(const EyeletChoices&) const = default;
};

}  // namespace coutil
