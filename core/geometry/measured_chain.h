#pragma once

#include <vector>

#include "core/geometry/path.h"

namespace coutil {

// A path as a chain of chords with the lengths to each of its points: places by length are found
// quickly, at the price of the flatness it was made with (mm) across the path and of a share of
// 2/3 (flatness / half a chord)^2 of the length along it.
class MeasuredChain {
  public:
    MeasuredChain(const Path& path, double flatnessMm);  // path not empty

    [[nodiscard]] double lengthMm() const { return lengths_.back(); }
    [[nodiscard]] Point at(double fromStartMm) const;  // clamped to the ends
    [[nodiscard]] const std::vector<Point>& points() const { return points_; }
    [[nodiscard]] const std::vector<double>& lengths() const { return lengths_; }  // to each point

  private:
    std::vector<Point> points_;
    std::vector<double> lengths_;
};

}  // namespace coutil
