#pragma once

#include <cstdint>
#include <cstdio>
#include <random>
#include <string>

#include "core/geometry/path.h"

namespace coutil::testing {

// Seeded curves for property tests. Numbers come straight from the bits of the engine, which the
// standard fixes, so a seed means the same curve everywhere.
class RandomCurves {
  public:
    explicit RandomCurves(std::uint64_t seed) : engine_(seed) {}

    double number(double low, double high) {
        return low + (high - low) * (static_cast<double>(engine_() >> 11) * 0x1p-53);
    }
    Point point(double sizeMm) { return {number(0, sizeMm), number(0, sizeMm)}; }
    // Any four control points in a square: loops, cusps and inflections included.
    Cubic cubic(double sizeMm) {
        return {point(sizeMm), point(sizeMm), point(sizeMm), point(sizeMm)};
    }
    Path path(int pieces, double sizeMm) {
        Path path;
        Point from = point(sizeMm);
        for (int i = 0; i < pieces; ++i) {
            Cubic c = cubic(sizeMm);
            c.p0 = from;
            from = c.p3;
            path.pieces.push_back(c);
        }
        return path;
    }

  private:
    std::mt19937_64 engine_;
};

// All digits, to repeat a failure by hand.
inline std::string written(const Point& p) {
    char text[80];
    std::snprintf(text, sizeof text, "{%.17g, %.17g}", p.x(), p.y());
    return text;
}

inline std::string written(const Cubic& c) {
    std::string text;
    for (const Point* p : {&c.p0, &c.p1, &c.p2, &c.p3}) text.append(written(*p)).append(" ");
    return text;
}

inline std::string written(const Path& path) {
    std::string text;
    for (const Cubic& c : path.pieces) text.append(written(c)).append("\n");
    return text;
}

}  // namespace coutil::testing
