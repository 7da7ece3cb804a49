#include "core/pattern/outline_check.h"

#include <algorithm>
#include <cstddef>
#include <numeric>

#include "core/geometry/tolerances.h"

namespace coutil {
namespace {

double cross(const Vector& a, const Vector& b) { return a.x() * b.y() - a.y() * b.x(); }

bool isWithin(const Point& p, const Point& a, const Point& b) {
    return p.x() >= std::min(a.x(), b.x()) && p.x() <= std::max(a.x(), b.x()) &&
           p.y() >= std::min(a.y(), b.y()) && p.y() <= std::max(a.y(), b.y());
}

std::optional<Point> meetingPoint(const Point& a, const Point& b, const Point& c, const Point& d) {
    const double sideC = cross(b - a, c - a);
    const double sideD = cross(b - a, d - a);
    const double sideA = cross(d - c, a - c);
    const double sideB = cross(d - c, b - c);
    if (sideC * sideD < 0 && sideA * sideB < 0) return a + (b - a) * (sideA / (sideA - sideB));
    if (sideC == 0 && isWithin(c, a, b)) return c;
    if (sideD == 0 && isWithin(d, a, b)) return d;
    if (sideA == 0 && isWithin(a, c, d)) return a;
    if (sideB == 0 && isWithin(b, c, d)) return b;
    return std::nullopt;
}

// x of a chain at a height, the innermost where it winds; nothing where it does not reach.
std::optional<double> chainXAt(const std::vector<Point>& chain, double heightMm, bool isFront) {
    std::optional<double> found;
    for (std::size_t i = 0; i + 1 < chain.size(); ++i) {
        const Point& a = chain[i];
        const Point& b = chain[i + 1];
        if (heightMm < std::min(a.y(), b.y()) || heightMm > std::max(a.y(), b.y())) continue;
        const double rise = b.y() - a.y();
        const double x = rise == 0 ? (isFront ? std::max(a.x(), b.x()) : std::min(a.x(), b.x()))
                                   : a.x() + (b.x() - a.x()) * (heightMm - a.y()) / rise;
        if (!found || (isFront ? x > *found : x < *found)) found = x;
    }
    return found;
}

}  // namespace

std::optional<Point> selfCrossingOf(const std::vector<Point>& closedChain) {
    std::vector<Point> points = closedChain;
    if (points.size() > 1 && (points.front() - points.back()).norm() <= tolerance::kSamePointMm)
        points.pop_back();
    const std::size_t count = points.size();
    const auto start = [&](std::size_t i) -> const Point& { return points[i]; };
    const auto end = [&](std::size_t i) -> const Point& { return points[(i + 1) % count]; };
    const auto lowest = [&](std::size_t i) { return std::min(start(i).y(), end(i).y()); };
    // Only segments that share a height can meet: look along the heights.
    std::vector<std::size_t> order(count);
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::sort(order, {}, lowest);
    for (std::size_t first = 0; first < count; ++first) {
        const std::size_t i = order[first];
        const double highest = std::max(start(i).y(), end(i).y());
        for (std::size_t second = first + 1; second < count; ++second) {
            const std::size_t j = order[second];
            if (lowest(j) > highest) break;
            if ((i + 1) % count == j || (j + 1) % count == i) continue;
            if (auto at = meetingPoint(start(i), end(i), start(j), end(j))) return at;
        }
    }
    return std::nullopt;
}

std::optional<Point> gapOf(const Path& outline) {
    for (std::size_t i = 0; i < outline.pieces.size(); ++i) {
        const Cubic& next = outline.pieces[(i + 1) % outline.pieces.size()];
        if ((outline.pieces[i].p3 - next.p0).norm() > tolerance::kSamePointMm) return next.p0;
    }
    return std::nullopt;
}

std::optional<NarrowestWidth> narrowestWidthOf(const Panel& panel) {
    std::vector<Point> front;
    std::vector<Point> back;
    for (const Edge& edge : panel.edges) {
        if (edge.role == EdgeRole::top || edge.role == EdgeRole::bottom) continue;
        const auto chain = flattened(edge.path, tolerance::kCheckFlatnessMm);
        auto& side = edge.runsUp ? back : front;
        side.insert(side.end(), chain.begin(), chain.end());
    }
    std::optional<NarrowestWidth> narrowest;
    const auto look = [&](double heightMm) {
        const auto frontX = chainXAt(front, heightMm, true);
        const auto backX = chainXAt(back, heightMm, false);
        if (!frontX || !backX) return;
        const double widthMm = *backX - *frontX;
        if (!narrowest || widthMm < narrowest->widthMm)
            narrowest = {widthMm, Point((*frontX + *backX) / 2, heightMm)};
    };
    for (const Point& p : front) look(p.y());
    for (const Point& p : back) look(p.y());
    return narrowest;
}

}  // namespace coutil
