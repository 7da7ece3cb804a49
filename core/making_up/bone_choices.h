#pragma once

#include <optional>
#include <vector>

#include "core/making_up/bone_type.h"

namespace coutil {

// What the maker buys bones from: rods or reels of these lengths (none: bones come ready cut, in
// steps).
struct BoneStock {
    BoneType type{};
    std::vector<double> lengthsMm{};
    double lossPerCutMm = 2;
    bool operator==(const BoneStock&) const = default;
};

struct BoneChoices {
    // What is left free in the channel at an end, inside the sewing line (common practice, no
    // source: 6 to 10 mm where bound, 12 where turned).
    double freeAtBoundMm = 8;
    double freeAtTurnedMm = 12;
    double stepMm = 10;      // bones come in steps of this; rounded down
    double shortestMm = 50;  // under this none is made
    // The tightest sideways bend of its channel that a kind takes, mm of radius (common practice,
    // no source).
    double flatSteelRadiusMm = 2000;
    double spiralSteelRadiusMm = 60;
    double syntheticRadiusMm = 400;
    std::vector<BoneStock> stock{};
    bool operator==(const BoneChoices&) const = default;
};

}  // namespace coutil
