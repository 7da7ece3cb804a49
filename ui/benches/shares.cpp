#include "ui/benches/shares.h"

#include <numeric>

namespace coutil {

std::vector<double> sharesWithOneSet(const std::vector<double>& shares, std::size_t index,
                                     double value) {
    std::vector<double> changed(shares);
    const double others = std::accumulate(shares.begin(), shares.end(), 0.0) - shares[index];
    const double left = 1 - value;
    const double even = left / static_cast<double>(shares.size() - 1);
    for (std::size_t i = 0; i < changed.size(); ++i) {
        if (i == index) {
            changed[i] = value;
        } else {
            changed[i] = others > 0 ? shares[i] * left / others : even;
        }
    }
    return changed;
}

}  // namespace coutil
