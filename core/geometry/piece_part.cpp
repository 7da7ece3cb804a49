#include "core/geometry/piece_part.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/closest_on_piece.h"
#include "core/geometry/cross_product.h"
#include "core/geometry/tolerances.h"

namespace coutil {

namespace {

struct Range {
    double low = 0;
    double high = 0;
};

bool areApart(const Range& a, const Range& b) {
    return a.low > b.high + tolerance::kTouchMm || b.low > a.high + tolerance::kTouchMm;
}

Range rangeAlong(const PiecePart& part, const Point& origin, const Vector& direction) {
    Range range{1e300, -1e300};
    for (const Point* p : part.points()) {
        const double along = direction.dot(*p - origin);
        range = {std::min(range.low, along), std::max(range.high, along)};
    }
    return range;
}

// The direction of the chord; zero for a part that closes on itself.
Vector chordDirection(const PiecePart& part) {
    const Vector chord = part.c.p3 - part.c.p0;
    const double length = chord.norm();
    return length > 0 ? Vector(chord / length) : Vector(Vector::Zero());
}

Vector leftOf(const Vector& v) { return {-v.y(), v.x()}; }

}  // namespace

std::pair<PiecePart, PiecePart> halvesOf(const PiecePart& part) {
    const auto [left, right] = splitAt(part.c, 0.5);
    const double middle = part.t0 + (part.t1 - part.t0) / 2;
    return {{left, part.t0, middle}, {right, middle, part.t1}};
}

double extentMm(const PiecePart& part) {
    const Box box = controlBoxOf(part.c);
    return std::max(box.widthMm(), box.heightMm());
}

bool cannotMeet(const PiecePart& a, const PiecePart& b) {
    const Box boxA = controlBoxOf(a.c);
    const Box boxB = controlBoxOf(b.c);
    for (const int axis : {0, 1}) {
        if (areApart({boxA.lowest[axis], boxA.highest[axis]},
                     {boxB.lowest[axis], boxB.highest[axis]})) {
            return true;
        }
    }
    for (const PiecePart* part : {&a, &b}) {
        const Vector across = leftOf(chordDirection(*part));
        if (areApart(rangeAlong(a, a.c.p0, across), rangeAlong(b, a.c.p0, across))) return true;
    }
    return false;
}

bool areTransversal(const PiecePart& a, const PiecePart& b) {
    // A chord is a sum of legs with positive weights; if all cross products of legs have one sign,
    // so has that of any two chords.
    constexpr double kLeast = tolerance::kParallelSine * tolerance::kParallelSine;
    int sign = 0;
    for (const Vector& legA : a.legs()) {
        if (legA.isZero(0)) continue;
        for (const Vector& legB : b.legs()) {
            if (legB.isZero(0)) continue;
            const double cross = crossProduct(legA, legB);
            if (cross * cross <= kLeast * legA.squaredNorm() * legB.squaredNorm()) return false;
            if (sign != 0 && (cross > 0) != (sign > 0)) return false;
            sign = cross > 0 ? 1 : -1;
        }
    }
    return sign != 0;
}

bool isThin(const PiecePart& part) {
    const Vector along = chordDirection(part);
    if (along.isZero(0)) return false;
    const Range across = rangeAlong(part, part.c.p0, leftOf(along));
    const auto legs = part.legs();
    return across.high - across.low <= tolerance::kTouchMm / 10 &&
           std::all_of(legs.begin(), legs.end(),
                       [&](const Vector& leg) { return leg.dot(along) >= 0; });
}

bool areNearlyParallel(const PiecePart& a, const PiecePart& b) {
    constexpr double kMostSine = 0.01;
    return std::abs(crossProduct(chordDirection(a), chordDirection(b))) < kMostSine;
}

std::optional<std::pair<Point, Point>> nearStretch(const PiecePart& a, const PiecePart& b) {
    const Vector along = chordDirection(a);
    const Vector across = leftOf(along);
    // b's chord in the frame of a's: from (u0, v0) to (u1, v1), u growing.
    double u0 = along.dot(b.c.p0 - a.c.p0);
    double u1 = along.dot(b.c.p3 - a.c.p0);
    double v0 = across.dot(b.c.p0 - a.c.p0);
    double v1 = across.dot(b.c.p3 - a.c.p0);
    if (u0 > u1) {
        std::swap(u0, u1);
        std::swap(v0, v1);
    }
    double low = std::max(0.0, u0);
    double high = std::min(along.dot(a.c.p3 - a.c.p0), u1);
    if (low > high && low <= high + tolerance::kTouchMm) low = high;
    const double slope = u1 > u0 ? (v1 - v0) / (u1 - u0) : 0;
    if (slope == 0) {
        if (std::abs(v0) > tolerance::kTouchMm) return std::nullopt;
    } else {
        const double crossing = u0 - v0 / slope;
        const double reach = tolerance::kTouchMm / std::abs(slope);
        low = std::max(low, crossing - reach);
        high = std::min(high, crossing + reach);
    }
    if (low > high) return std::nullopt;
    return std::pair<Point, Point>{a.c.p0 + along * low, a.c.p0 + along * high};
}

}  // namespace coutil
