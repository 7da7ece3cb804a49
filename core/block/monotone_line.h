#pragma once

#include <vector>

namespace coutil {

// How a monotone line leaves its first and last point.
enum class LineEnd {
    level,   // slope 0
    pointed  // steep: 2.5 times the secant (3 is the most a monotone cubic bears)
};

struct ValueAndSlope {
    double y = 0;
    double slope = 0;
};

// A line through given points with x ascending, monotone between neighbours (Fritsch and Carlson's
// rule with the harmonic mean of the secants; memory). Constant beyond the ends.
class MonotoneLine {
  public:
    void add(double x, double y);  // any order; a second point at one x replaces the first
    [[nodiscard]] ValueAndSlope at(double x, LineEnd first, LineEnd last) const;
    [[nodiscard]] double straightValueAt(double x) const;

  private:
    struct Knot {
        double x = 0;
        double y = 0;
    };
    [[nodiscard]] double slopeAt(std::size_t knot, LineEnd first, LineEnd last) const;
    [[nodiscard]] double secant(std::size_t interval) const;
    [[nodiscard]] std::size_t intervalAt(double x) const;
    std::vector<Knot> knots_;
};

}  // namespace coutil
