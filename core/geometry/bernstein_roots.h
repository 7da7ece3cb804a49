#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>

#include "core/geometry/tolerances.h"

namespace coutil {

// A polynomial of degree N on 0..1 by its N + 1 Bernstein coefficients.
template <std::size_t N>
using Bernstein = std::array<double, N + 1>;

// The roots of one polynomial in growing order: at most N, as there are no more.
template <std::size_t N>
class Roots {
  public:
    // Unless it is within `width` of the one before.
    void append(double root, double width = tolerance::kRootWidth) {
        const bool isKnown = count_ > 0 && root <= values_[count_ - 1] + width;
        if (!isKnown && count_ < N) values_[count_++] = root;
    }
    [[nodiscard]] const double* begin() const { return values_.data(); }
    [[nodiscard]] const double* end() const { return values_.data() + count_; }

  private:
    std::array<double, N> values_{};
    std::size_t count_ = 0;
};

namespace bernstein {

template <std::size_t N>
int signChanges(const Bernstein<N>& b) {
    int changes = 0;
    double last = 0;
    for (const double value : b) {
        if (value == 0) continue;
        if (last != 0 && (value > 0) != (last > 0)) ++changes;
        last = value;
    }
    return changes;
}

// De Casteljau's scheme at the middle.
template <std::size_t N>
void halve(const Bernstein<N>& whole, Bernstein<N>& left, Bernstein<N>& right) {
    right = whole;
    for (std::size_t level = 0; level <= N; ++level) {
        left[level] = right[0];
        for (std::size_t i = 0; i + level < N; ++i) right[i] = (right[i] + right[i + 1]) / 2;
    }
}

// The one root of a polynomial whose end values differ in sign: Newton's method from the secant's
// root, halving the bracket instead where it would leave it.
template <std::size_t N>
double bracketedRoot(const Bernstein<N>& b) {
    constexpr int kMostSteps = 100;
    double low = 0;
    double high = 1;
    double t = b[0] / (b[0] - b[N]);
    for (int step = 0; step < kMostSteps; ++step) {
        Bernstein<N> level = b;
        for (std::size_t n = N; n > 1; --n) {
            for (std::size_t i = 0; i < n; ++i) level[i] += t * (level[i + 1] - level[i]);
        }
        const double leg = level[1] - level[0];
        const double value = level[0] + t * leg;
        if (value == 0) return t;
        ((value > 0) == (b[0] > 0) ? low : high) = t;
        double next = t - value / (static_cast<double>(N) * leg);
        if (!(next > low && next < high)) next = low + (high - low) / 2;
        if (std::abs(next - t) <= tolerance::kRootWidth) return next;
        t = next;
    }
    return t;
}

// Roots within t0..t1, the part that b stands for. Where all coefficients are below noise the
// part cannot be told from zero: it counts as one root.
template <std::size_t N>
void appendRoots(const Bernstein<N>& b, double noise, double t0, double t1, Roots<N>& roots) {
    const int changes = signChanges<N>(b);
    const double middle = t0 + (t1 - t0) / 2;
    const bool isNoise =
        t1 - t0 <= tolerance::kRootWidth ||
        std::all_of(b.begin(), b.end(), [noise](double v) { return std::abs(v) <= noise; });
    if (changes > 1 && isNoise) {
        roots.append(middle, tolerance::kNoiseRootWidth);
    } else if (!isNoise && (changes > 1 || (changes == 1 && (b[0] == 0 || b[N] == 0)))) {
        Bernstein<N> left;
        Bernstein<N> right;
        halve<N>(b, left, right);
        appendRoots<N>(left, noise, t0, middle, roots);
        appendRoots<N>(right, noise, middle, t1, roots);
    } else {
        if (b[0] == 0) roots.append(t0);
        if (changes == 1) roots.append(t0 + (t1 - t0) * bracketedRoot<N>(b));
        if (b[N] == 0) roots.append(t1);
    }
}

}  // namespace bernstein

// All roots in 0..1 in growing order. By Descartes' rule the number of sign changes of the
// coefficients is the number of roots or exceeds it by an even number; parts are halved until it is
// none or one. Error below kRootWidth beyond what the rounding of the coefficients does; a touching
// of zero counts once, to about 1e-8. The zero polynomial has none.
template <std::size_t N>
Roots<N> rootsOf(const Bernstein<N>& b) {
    Roots<N> roots;
    double largest = 0;
    for (const double value : b) largest = std::max(largest, std::abs(value));
    if (largest > 0) bernstein::appendRoots<N>(b, tolerance::kRootNoise * largest, 0, 1, roots);
    return roots;
}

}  // namespace coutil
