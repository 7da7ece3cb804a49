#include <cstddef>
#include <numeric>

#include "core/block/draft_corset.h"

namespace coutil {
namespace {

using Shares = std::vector<double>;

// Five panels as the drafting rules give them; the others by the same reasoning: the bust seam
// shapes under and over the bust, all seams the waist, side and back seams the hip.
struct SharesOfPanelCount {
    Shares aboveBust;
    Shares underBust;
    Shares waist;
    Shares hip;
};

const SharesOfPanelCount& sharesOf(int panelsPerHalf) {
    static const SharesOfPanelCount four{
        {0.50, 0.25, 0.25}, {0.50, 0.24, 0.26}, {0.31, 0.37, 0.32}, {0.18, 0.46, 0.36}};
    static const SharesOfPanelCount five{{0.45, 0.20, 0.15, 0.20},
                                         {0.46, 0.22, 0.14, 0.18},
                                         {0.24, 0.26, 0.26, 0.24},
                                         {0.14, 0.26, 0.34, 0.26}};
    static const SharesOfPanelCount six{{0.42, 0.18, 0.11, 0.12, 0.17},
                                        {0.43, 0.19, 0.11, 0.12, 0.15},
                                        {0.20, 0.20, 0.21, 0.20, 0.19},
                                        {0.11, 0.18, 0.27, 0.25, 0.19}};
    static const SharesOfPanelCount seven{{0.40, 0.17, 0.10, 0.08, 0.10, 0.15},
                                          {0.41, 0.17, 0.10, 0.09, 0.10, 0.13},
                                          {0.17, 0.17, 0.17, 0.17, 0.17, 0.15},
                                          {0.09, 0.13, 0.20, 0.23, 0.20, 0.15}};
    switch (panelsPerHalf) {
        case 4:
            return four;
        case 5:
            return five;
        case 6:
            return six;
        default:
            return seven;
    }
}

// Typed shares carry rounding ("33 %"); girths must not.
Shares summingToOne(Shares shares) {
    const double sum = std::accumulate(shares.begin(), shares.end(), 0.0);
    for (double& share : shares) share /= sum;
    return shares;
}

}  // namespace

std::vector<double> seamSharesInForce(const Style& style, LevelId level) {
    const auto own = style.seamShares.find(level);
    if (own != style.seamShares.end()) return summingToOne(own->second);
    const SharesOfPanelCount& shares = sharesOf(style.panelsPerHalf);
    switch (level) {
        case LevelId::aboveBust:
            return shares.aboveBust;
        case LevelId::bust:
        case LevelId::underBust:
            return shares.underBust;
        case LevelId::waist:
            return shares.waist;
        case LevelId::highHip:
        case LevelId::hip:
            return shares.hip;
    }
    return {};
}

}  // namespace coutil
