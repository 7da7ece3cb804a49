#include "core/geometry/prepared_chain.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/geometry/cross_product.h"

namespace coutil {

namespace {

constexpr std::size_t kSidesPerGroup = 4;

// Share of the side a-b at which the point nearest to p lies.
double nearestShare(const Point& p, const Point& a, const Point& b) {
    const Vector side = b - a;
    const double length2 = side.squaredNorm();
    return length2 == 0 ? 0 : std::clamp((p - a).dot(side) / length2, 0.0, 1.0);
}

bool liesRight(const Point& p, const Point& a, const Point& b) {
    return crossProduct(b - a, p - a) <= 0;
}

double squaredDistanceTo(const Box& box, const Point& p) {
    return (box.lowest - p).cwiseMax(p - box.highest).cwiseMax(0).squaredNorm();
}

}  // namespace

PreparedChain::PreparedChain(std::vector<Point> points) : points_(std::move(points)) {
    for (std::size_t from = 0; from + 1 < points_.size(); from += kSidesPerGroup) {
        Group group{from, std::min(from + kSidesPerGroup, points_.size() - 1), {}};
        for (std::size_t k = group.from; k <= group.to; ++k) group.box.include(points_[k]);
        whole_.include(group.box);
        groups_.push_back(group);
    }
}

// Calls take(side, share, squared distance) for the sides of a group nearer than limit2, which
// `take` may lower.
template <class Take>
void PreparedChain::visitGroup(const Group& group, const Point& p, double& limit2,
                               const Take& take) {
    if (squaredDistanceTo(group.box, p) >= limit2) return;
    for (std::size_t k = group.from; k < group.to; ++k) {
        const double share = nearestShare(p, points_[k], points_[k + 1]);
        const Point nearest = points_[k] + share * (points_[k + 1] - points_[k]);
        const double distance2 = (p - nearest).squaredNorm();
        if (distance2 >= limit2) continue;
        take(k, share, distance2);
        lastGroup_ = static_cast<std::size_t>(&group - groups_.data());
    }
}

template <class Take>
void PreparedChain::visitNear(const Point& p, double& limit2, const Take& take) {
    if (squaredDistanceTo(whole_, p) >= limit2) return;
    const std::size_t first = lastGroup_;
    visitGroup(groups_[first], p, limit2, take);
    for (std::size_t k = 0; k < groups_.size(); ++k) {
        if (k != first) visitGroup(groups_[k], p, limit2, take);
    }
}

std::optional<Point> PreparedChain::nearestWithOnRight(const Point& p, double slackMm,
                                                       double limitMm) {
    double limit2 = limitMm * limitMm;
    std::optional<Point> found;
    const auto isRightOf = [&](std::size_t k) { return liesRight(p, points_[k], points_[k + 1]); };
    const auto shareOf = [&](std::size_t k) { return nearestShare(p, points_[k], points_[k + 1]); };
    visitNear(p, limit2, [&](std::size_t k, double share, double distance2) {
        if (distance2 > slackMm * slackMm) {
            if (!isRightOf(k)) return;
            // A corner of the chain counts where it is the nearest place of both its sides and p is
            // right of both; otherwise a hollow could be seen from behind.
            const bool isEnd = share >= 1 && k + 2 < points_.size();
            if (isEnd && !(shareOf(k + 1) <= 0 && isRightOf(k + 1))) return;
            const bool isStart = share <= 0 && k > 0;
            if (isStart && !(shareOf(k - 1) >= 1 && isRightOf(k - 1))) return;
        }
        limit2 = distance2;
        found = points_[k] + share * (points_[k + 1] - points_[k]);
    });
    return found;
}

std::optional<Point> PreparedChain::nearest(const Point& p, double limitMm) {
    double limit2 = limitMm * limitMm;
    std::optional<Point> found;
    visitNear(p, limit2, [&](std::size_t k, double share, double distance2) {
        limit2 = distance2;
        found = points_[k] + share * (points_[k + 1] - points_[k]);
    });
    return found;
}

bool PreparedChain::parts(const Point& a, const Point& b) const {
    Box way;
    way.include(a);
    way.include(b);
    const Vector along = b - a;
    for (const Group& group : groups_) {
        if ((group.box.highest.array() < way.lowest.array()).any() ||
            (group.box.lowest.array() > way.highest.array()).any()) {
            continue;
        }
        for (std::size_t k = group.from; k < group.to; ++k) {
            const Point& c = points_[k];
            const Point& d = points_[k + 1];
            const bool isAcross = crossProduct(along, c - a) * crossProduct(along, d - a) < 0;
            if (isAcross && crossProduct(d - c, a - c) * crossProduct(d - c, b - c) < 0)
                return true;
        }
    }
    return false;
}

bool PreparedChain::encloses(const Point& p) const {
    if (squaredDistanceTo(whole_, p) > 0) return false;
    bool inside = false;
    const auto cross = [&](const Point& a, const Point& b) {
        if ((a.y() > p.y()) == (b.y() > p.y())) return;
        const double x = a.x() + (p.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x());
        if (p.x() < x) inside = !inside;
    };
    for (const Group& group : groups_) {
        if (p.y() < group.box.lowest.y() || p.y() > group.box.highest.y() ||
            p.x() > group.box.highest.x()) {
            continue;
        }
        for (std::size_t k = group.from; k < group.to; ++k) cross(points_[k], points_[k + 1]);
    }
    cross(points_.back(), points_.front());
    return inside;
}

}  // namespace coutil
