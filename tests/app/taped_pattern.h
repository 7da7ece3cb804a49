#pragma once

#include <string>
#include <vector>

#include <nlohmann/json.hpp>

namespace coutil::test {

struct TapedPoint {
    double x = 0;
    double y = 0;
};

// An edge of what `pattern --json` printed, as a chain of short chords (each piece in 400), running
// upwards. Measured with this file's own arithmetic, not the program's.
class TapedEdge {
  public:
    TapedEdge(const nlohmann::json& pattern, const std::string& panel, const std::string& side,
              const std::string& edge);

    [[nodiscard]] double aboveWaistMm() const { return lengthMm_ - waistMm_; }
    [[nodiscard]] double belowWaistMm() const { return waistMm_; }
    [[nodiscard]] TapedPoint at(double seamPositionMm) const;
    // How far another state of this edge lies to the right of this one at a seam position, square
    // to this one.
    [[nodiscard]] double movedRightMm(double seamPositionMm, const TapedEdge& other) const;

  private:
    [[nodiscard]] std::size_t chordAt(double alongMm) const;

    std::vector<TapedPoint> points_;
    std::vector<double> alongMm_;  // from the lower end, of every point
    double lengthMm_ = 0;
    double waistMm_ = 0;  // from the lower end to the waist, y = 0
};

// What the tape says was taken in across a seam at a position between two states of a pattern:
// what the panel in front and the panel behind lost together. Sides as in the JSON.
[[nodiscard]] double takenInMm(const nlohmann::json& before, const nlohmann::json& after,
                               const std::string& seam, double positionMm,
                               const std::string& sideBefore, const std::string& sideAfter);

// A member of a list by its name.
[[nodiscard]] const nlohmann::json& named(const nlohmann::json& list, const std::string& name);

}  // namespace coutil::test
