#include "core/geometry/measured_chain.h"

#include <algorithm>
#include <cstddef>

namespace coutil {

MeasuredChain::MeasuredChain(const Path& path, double flatnessMm)
    : points_(flattened(path, flatnessMm)) {
    double sumMm = 0;
    lengths_.reserve(points_.size());
    lengths_.push_back(0);
    for (std::size_t i = 1; i < points_.size(); ++i) {
        sumMm += (points_[i] - points_[i - 1]).norm();
        lengths_.push_back(sumMm);
    }
}

Point MeasuredChain::at(double fromStartMm) const {
    const auto after = std::ranges::upper_bound(lengths_, fromStartMm);
    if (after == lengths_.begin()) return points_.front();
    if (after == lengths_.end()) return points_.back();
    const auto i = static_cast<std::size_t>(after - lengths_.begin());
    const double share = (fromStartMm - lengths_[i - 1]) / (lengths_[i] - lengths_[i - 1]);
    return points_[i - 1] + (points_[i] - points_[i - 1]) * share;
}

}  // namespace coutil
