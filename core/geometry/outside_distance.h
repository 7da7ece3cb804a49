#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/geometry/cubic.h"

namespace coutil {

// A chain of points prepared for many questions: its sides in groups with their bounds.
class OutsideDistance {
  public:
    explicit OutsideDistance(std::vector<Point> points);  // at least two

    // Distance from p to the nearest place of the chain that has p on its right or is nearer
    // than slackMm; limitMm where that is more than limitMm. For an outline that runs
    // counter-clockwise: how far p lies outside it, whatever lies behind.
    [[nodiscard]] double toRightSidesMm(const Point& p, double slackMm, double limitMm) const;

    // Distance to the nearest side, limitMm where that is more.
    [[nodiscard]] double toAnySideMm(const Point& p, double limitMm) const;

    // Whether p lies inside the chain closed by a side from its last point to its first (even-odd).
    [[nodiscard]] bool encloses(const Point& p) const;

    // The same question as toAnySideMm, asked for the point itself; nothing where none is nearer.
    [[nodiscard]] std::optional<Point> nearestWithinMm(const Point& p, double limitMm) const;

  private:
    struct Group {
        std::size_t from = 0;  // sides from..to
        std::size_t to = 0;
        Box box;
    };
    template <class Take>
    void visitNear(const Point& p, double& limit2, const Take& take) const;

    std::vector<Point> points_;
    std::vector<Group> groups_;
};

}  // namespace coutil
