#include "core/geometry/offset_arm.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/cross_product.h"

namespace coutil {

namespace {

// Half the length of a chain of points, mm.
double halfLengthMm(const std::vector<Point>& points) {
    double length = 0;
    for (std::size_t k = 1; k < points.size(); ++k) length += (points[k] - points[k - 1]).norm();
    return length / 2;
}

// Appends the points of [from, to) and stops after reachMm, on a point of its own.
template <class Iterator>
void appendInwards(Iterator from, Iterator to, double reachMm, std::vector<Point>& points) {
    points.push_back(*from);
    for (auto it = std::next(from); it != to; ++it) {
        const Vector step = *it - points.back();
        const double length = step.norm();
        if (length >= reachMm) {
            points.emplace_back(points.back() + reachMm / length * step);
            return;
        }
        reachMm -= length;
        points.push_back(*it);
    }
}

// Crossing of the segments a-b and c-d, ends included.
std::optional<Point> crossingOf(const Point& a, const Point& b, const Point& c, const Point& d) {
    const Vector ab = b - a;
    const Vector cd = d - c;
    const double across = crossProduct(ab, cd);
    if (across == 0) return std::nullopt;
    const double onFirst = crossProduct(c - a, cd) / across;
    const double onSecond = crossProduct(c - a, ab) / across;
    constexpr double kRounding = 1e-12;  // of the ratios above, so that shared ends are met
    const auto isInside = [](double s) { return s >= -kRounding && s <= 1 + kRounding; };
    if (!isInside(onFirst) || !isInside(onSecond)) return std::nullopt;
    return a + onFirst * ab;
}

}  // namespace

OffsetArm armAtEnd(const OffsetChain& chain, double reachMm) {
    OffsetArm arm;
    arm.beyond = chain.endDirection;
    arm.outward = {chain.endDirection.y(), -chain.endDirection.x()};
    arm.widthMm = chain.widthMm;
    arm.points.emplace_back(chain.points.back() + reachMm * arm.beyond);
    appendInwards(chain.points.rbegin(), chain.points.rend(),
                  std::min(reachMm, halfLengthMm(chain.points)), arm.points);
    return arm;
}

OffsetArm armAtStart(const OffsetChain& chain, double reachMm) {
    OffsetArm arm;
    arm.beyond = -chain.startDirection;
    arm.outward = {chain.startDirection.y(), -chain.startDirection.x()};
    arm.widthMm = chain.widthMm;
    arm.points.emplace_back(chain.points.front() + reachMm * arm.beyond);
    appendInwards(chain.points.begin(), chain.points.end(),
                  std::min(reachMm, halfLengthMm(chain.points)), arm.points);
    return arm;
}

std::optional<ChainCrossing> firstCrossing(const std::vector<Point>& first,
                                           const std::vector<Point>& second) {
    for (std::size_t i = 0; i + 1 < first.size(); ++i) {
        std::optional<ChainCrossing> nearest;
        double nearest2 = 0;
        for (std::size_t j = 0; j + 1 < second.size(); ++j) {
            const auto at = crossingOf(first[i], first[i + 1], second[j], second[j + 1]);
            if (!at) continue;
            const double distance2 = (*at - first[i]).squaredNorm();
            if (nearest && distance2 >= nearest2) continue;
            nearest = ChainCrossing{{i, *at}, {j, *at}};
            nearest2 = distance2;
        }
        if (nearest) return nearest;
    }
    return std::nullopt;
}

}  // namespace coutil
