#pragma once

#include <cstdint>
#include <random>
#include <vector>

#include "core/geometry/offset_outline.h"

namespace coutil::test {

// Repeatable numbers that do not depend on the standard library's distributions.
class Dice {
  public:
    explicit Dice(std::uint32_t seed) : engine_(seed) {}
    double between(double lowest, double highest) {
        return lowest + (highest - lowest) * (static_cast<double>(engine_()) / 4294967296.0);
    }
    int whole(int lowest, int highest) {
        return lowest + static_cast<int>(engine_() % static_cast<unsigned>(highest - lowest + 1));
    }
    bool oneIn(int n) { return whole(1, n) == 1; }

  private:
    std::mt19937 engine_;
};

// Panel-like outlines, turned at random, counter-clockwise: bodice panels with hollow waists and
// sprung hips (some 30 mm narrow), pieces with V notches, crescents, stars of curved edges with
// re-entrant corners. They may cross themselves; the caller sorts those out. Widths are 0.
std::vector<OffsetEdge> randomOutline(Dice& dice);

// A width of 0 to 25 mm: often 0, a whole millimetre, or the same as another edge's.
void giveRandomWidths(std::vector<OffsetEdge>& edges, Dice& dice);

std::vector<CornerTreatment> randomTreatments(std::size_t count, Dice& dice);

}  // namespace coutil::test
