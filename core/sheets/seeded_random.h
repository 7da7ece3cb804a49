#pragma once

#include <cstdint>

namespace coutil {

// A stream of numbers that is the same on every machine for the same seed (SplitMix64, Steele, Lea
// and Flood 2014; the standard's distributions differ between libraries).
class SeededRandom {
  public:
    explicit SeededRandom(std::uint64_t seed) : state_(seed) {}

    std::uint64_t next() {
        state_ += 0x9E3779B97F4A7C15ULL;
        std::uint64_t z = state_;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9ULL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBULL;
        return z ^ (z >> 31);
    }
    // 0 to count - 1; count at least 1. The bias is below count / 2^32.
    int below(int count) {
        return static_cast<int>(((next() >> 32) * static_cast<std::uint64_t>(count)) >> 32);
    }
    // -most to most.
    int within(int most) { return below(2 * most + 1) - most; }
    // 0 up to, not including, 1.
    double part() { return static_cast<double>(next() >> 11) * 0x1.0p-53; }

  private:
    std::uint64_t state_;
};

}  // namespace coutil
