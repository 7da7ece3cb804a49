#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/geometry/cubic.h"

namespace coutil {

// A chain of points prepared for many questions: its sides in groups with their bounds. It
// remembers where the last answer was, so that questions about neighbouring points are quick.
class PreparedChain {
  public:
    explicit PreparedChain(std::vector<Point> points);  // at least two

    // The nearest place of the chain that has p on its right or is nearer than slackMm; nothing
    // where none is nearer than limitMm. For an outline that runs counter-clockwise: the place p
    // lies outside of, whatever lies behind.
    [[nodiscard]] std::optional<Point> nearestWithOnRight(const Point& p, double slackMm,
                                                          double limitMm);

    // The nearest place of the chain; nothing where none is nearer than limitMm.
    [[nodiscard]] std::optional<Point> nearest(const Point& p, double limitMm);

    // Whether p lies inside the chain closed by a side from its last point to its first (even-odd).
    [[nodiscard]] bool encloses(const Point& p) const;

    // Whether the straight way from a to b crosses the chain.
    [[nodiscard]] bool parts(const Point& a, const Point& b) const;

  private:
    struct Group {
        std::size_t from = 0;  // sides from..to
        std::size_t to = 0;
        Box box;
    };
    template <class Take>
    void visitNear(const Point& p, double& limit2, const Take& take);
    template <class Take>
    void visitGroup(const Group& group, const Point& p, double& limit2, const Take& take);

    std::vector<Point> points_;
    std::vector<Group> groups_;
    Box whole_;
    std::size_t lastGroup_ = 0;
};

}  // namespace coutil
