#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <vector>

#include "core/geometry/tolerances.h"

namespace coutil {

// A polynomial of degree N on 0..1 by its N + 1 Bernstein coefficients.
template <std::size_t N>
using Bernstein = std::array<double, N + 1>;

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

// De Casteljau's scheme: left becomes the part below t, the rest is left in right.
template <std::size_t N>
void split(const Bernstein<N>& whole, double t, Bernstein<N>& left, Bernstein<N>& right) {
    right = whole;
    for (std::size_t level = 0; level <= N; ++level) {
        left[level] = right[0];
        for (std::size_t i = 0; i + level < N; ++i) right[i] += t * (right[i + 1] - right[i]);
    }
}

template <std::size_t N>
double valueAt(Bernstein<N> b, double t) {
    for (std::size_t level = N; level > 0; --level) {
        for (std::size_t i = 0; i < level; ++i) b[i] += t * (b[i + 1] - b[i]);
    }
    return b[0];
}

// The one root of a polynomial whose end values differ in sign: regula falsi with the weight of a
// stuck end halved (Illinois), never leaving the bracket.
template <std::size_t N>
double bracketedRoot(const Bernstein<N>& b) {
    constexpr int kMostSteps = 100;
    double low = 0;
    double high = 1;
    double atLow = b[0];
    double atHigh = b[N];
    for (int step = 0; step < kMostSteps && high - low > tolerance::kRootWidth; ++step) {
        double t = low + (high - low) * (atLow / (atLow - atHigh));
        if (step % 8 == 7 || !(t > low && t < high)) t = low + (high - low) / 2;
        const double value = valueAt<N>(b, t);
        if (value == 0) return t;
        if ((value > 0) == (atLow > 0)) {
            low = t;
            atLow = value;
            atHigh /= 2;
        } else {
            high = t;
            atHigh = value;
            atLow /= 2;
        }
    }
    return low + (high - low) / 2;
}

// Roots within t0..t1, the part that b stands for. Where all coefficients are below noise the
// part cannot be told from zero: it counts as one root.
template <std::size_t N>
void appendRoots(const Bernstein<N>& b, double noise, double t0, double t1,
                 std::vector<double>& roots) {
    const auto append = [&roots](double t) {
        if (roots.empty() || t > roots.back() + tolerance::kRootWidth) roots.push_back(t);
    };
    const int changes = signChanges<N>(b);
    const double middle = t0 + (t1 - t0) / 2;
    const bool isNoise =
        std::all_of(b.begin(), b.end(), [noise](double v) { return std::abs(v) <= noise; });
    if (changes > 1 && isNoise) {
        if (roots.empty() || t0 > roots.back() + tolerance::kNoiseRootWidth) append(middle);
    } else if (changes > 1 || (changes == 1 && (b[0] == 0 || b[N] == 0))) {
        Bernstein<N> left;
        Bernstein<N> right;
        split<N>(b, 0.5, left, right);
        appendRoots<N>(left, noise, t0, middle, roots);
        appendRoots<N>(right, noise, middle, t1, roots);
    } else {
        if (b[0] == 0) append(t0);
        if (changes == 1) append(t0 + (t1 - t0) * bracketedRoot<N>(b));
        if (b[N] == 0) append(t1);
    }
}

}  // namespace bernstein

// All roots in 0..1 in growing order. By Descartes' rule the number of sign changes of the
// coefficients is the number of roots or exceeds it by an even number; parts are halved until it is
// none or one. Error below kRootWidth beyond what the rounding of the coefficients does; a touching
// of zero counts once, to about 1e-8. The zero polynomial has none.
template <std::size_t N>
std::vector<double> rootsOf(const Bernstein<N>& b) {
    std::vector<double> roots;
    double largest = 0;
    for (const double value : b) largest = std::max(largest, std::abs(value));
    if (largest > 0) bernstein::appendRoots<N>(b, tolerance::kRootNoise * largest, 0, 1, roots);
    return roots;
}

}  // namespace coutil
