#include "core/block/monotone_line.h"

#include <algorithm>
#include <cstddef>

namespace coutil {
namespace {

constexpr double kPointedSlope = 2.5;

}  // namespace

void MonotoneLine::add(double x, double y) {
    const auto at = std::lower_bound(knots_.begin(), knots_.end(), x,
                                     [](const Knot& knot, double value) { return knot.x < value; });
    if (at != knots_.end() && at->x == x) {
        at->y = y;
    } else {
        knots_.insert(at, {x, y});
    }
}

double MonotoneLine::secant(std::size_t interval) const {
    const Knot& a = knots_[interval];
    const Knot& b = knots_[interval + 1];
    return (b.y - a.y) / (b.x - a.x);
}

double MonotoneLine::slopeAt(std::size_t knot, LineEnd first, LineEnd last) const {
    if (knot == 0) return first == LineEnd::level ? 0 : kPointedSlope * secant(0);
    if (knot + 1 == knots_.size())
        return last == LineEnd::level ? 0 : kPointedSlope * secant(knot - 1);
    const double before = secant(knot - 1);
    const double after = secant(knot);
    if (before * after <= 0) return 0;
    const double h0 = knots_[knot].x - knots_[knot - 1].x;
    const double h1 = knots_[knot + 1].x - knots_[knot].x;
    return 3 * (h0 + h1) / ((2 * h1 + h0) / before + (h1 + 2 * h0) / after);
}

std::size_t MonotoneLine::intervalAt(double x) const {
    std::size_t interval = 0;
    while (interval + 2 < knots_.size() && knots_[interval + 1].x < x) ++interval;
    return interval;
}

ValueAndSlope MonotoneLine::at(double x, LineEnd first, LineEnd last) const {
    if (knots_.size() == 1 || x < knots_.front().x) return {knots_.front().y, 0};
    if (x > knots_.back().x) return {knots_.back().y, 0};
    const std::size_t i = intervalAt(x);
    const double h = knots_[i + 1].x - knots_[i].x;
    const double t = (x - knots_[i].x) / h;
    const double s = 1 - t;
    const double rise = knots_[i + 1].y - knots_[i].y;
    const double slopeBefore = slopeAt(i, first, last);
    const double slopeAfter = slopeAt(i + 1, first, last);
    return {
        knots_[i].y + t * t * (3 - 2 * t) * rise + h * t * s * (s * slopeBefore - t * slopeAfter),
        6 * t * s * rise / h + s * (1 - 3 * t) * slopeBefore + t * (3 * t - 2) * slopeAfter};
}

double MonotoneLine::straightValueAt(double x) const {
    if (knots_.size() == 1 || x <= knots_.front().x) return knots_.front().y;
    if (x >= knots_.back().x) return knots_.back().y;
    const std::size_t i = intervalAt(x);
    return knots_[i].y + (x - knots_[i].x) * secant(i);
}

}  // namespace coutil
