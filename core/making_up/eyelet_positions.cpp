#include <algorithm>
#include <cmath>
#include <cstddef>

#include "core/making_up/eyelets.h"

namespace coutil {
namespace {

// Equal steps from one end to the other, as near to the pitch as whole numbers allow; without the
// first place.
void addSteps(double fromMm, double toMm, double pitchMm, std::vector<double>& positionsMm) {
    const double spanMm = toMm - fromMm;
    const int steps = std::max(1, static_cast<int>(std::lround(spanMm / pitchMm)));
    for (int k = 1; k <= steps; ++k) positionsMm.push_back(fromMm + spanMm * k / steps);
}

}  // namespace

BonesBesideEyelets bonesBesideEyelets(const EyeletChoices& choices) {
    return {choices.columnMm - choices.boneSpaceMm, choices.columnMm + choices.boneSpaceMm};
}

std::vector<double> eyeletPositionsMm(const SharedStretch& stretch, const EyeletChoices& choices) {
    const double lowestMm = stretch.bottomMm + choices.endMm;
    const double highestMm = stretch.topMm - choices.endMm;
    if (highestMm - lowestMm < choices.pitchMm) return {};
    std::vector<double> positionsMm{lowestMm};
    const double halfPairMm = choices.waistPairMm / 2;
    const double leastMm = choices.pitchMm / 2;
    if (halfPairMm > 0 && -halfPairMm - lowestMm >= leastMm && highestMm - halfPairMm >= leastMm) {
        addSteps(lowestMm, -halfPairMm, choices.pitchMm, positionsMm);
        positionsMm.push_back(halfPairMm);
        addSteps(halfPairMm, highestMm, choices.pitchMm, positionsMm);
    } else {
        addSteps(lowestMm, highestMm, choices.pitchMm, positionsMm);
    }
    return positionsMm;
}

double zigzagLengthMm(const std::vector<double>& positionsMm, const std::vector<double>& widthsMm) {
    if (positionsMm.empty()) return 0;
    double sumMm = widthsMm.front();
    for (std::size_t i = 0; i + 1 < positionsMm.size(); ++i) {
        sumMm += 2 * std::hypot((widthsMm[i] + widthsMm[i + 1]) / 2,
                                positionsMm[i + 1] - positionsMm[i]);
    }
    return sumMm;
}

}  // namespace coutil
