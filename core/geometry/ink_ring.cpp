#include "core/geometry/ink_ring.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <map>
#include <numeric>

#include "core/geometry/tolerances.h"

namespace coutil {

namespace {

struct Side {
    InkPoint a;
    InkPoint b;
};

Side sideOf(const InkRing& ring, std::size_t k) { return {ring[k], ring[(k + 1) % ring.size()]}; }

// Positive where p lies left of a-b.
std::int64_t turnAt(const InkPoint& a, const InkPoint& b, const InkPoint& p) {
    return (b.xUm - a.xUm) * (p.yUm - a.yUm) - (b.yUm - a.yUm) * (p.xUm - a.xUm);
}

int signOf(std::int64_t value) { return (value > 0) - (value < 0); }

bool liesOn(const InkPoint& p, const Side& s) {
    return turnAt(s.a, s.b, p) == 0 && std::min(s.a.xUm, s.b.xUm) <= p.xUm &&
           p.xUm <= std::max(s.a.xUm, s.b.xUm) && std::min(s.a.yUm, s.b.yUm) <= p.yUm &&
           p.yUm <= std::max(s.a.yUm, s.b.yUm);
}

bool meet(const Side& s, const Side& t) {
    const int a = signOf(turnAt(s.a, s.b, t.a));
    const int b = signOf(turnAt(s.a, s.b, t.b));
    const int c = signOf(turnAt(t.a, t.b, s.a));
    const int d = signOf(turnAt(t.a, t.b, s.b));
    if (a * b < 0 && c * d < 0) return true;
    return (a == 0 && liesOn(t.a, s)) || (b == 0 && liesOn(t.b, s)) || (c == 0 && liesOn(s.a, t)) ||
           (d == 0 && liesOn(s.b, t));
}

bool isNeighbourSound(const Side& s, const Side& next) {
    return s.a != s.b && !liesOn(next.b, s) && !liesOn(s.a, next);
}

// Visits all pairs of sides whose extents along the ring's longer way overlap, until `visit` says
// stop.
template <class Visit>
void visitOverlapping(const InkRing& ring, const Visit& visit) {
    const std::size_t n = ring.size();
    const auto [left, right] = std::minmax_element(ring.begin(), ring.end(),
                                                   [](auto& p, auto& q) { return p.xUm < q.xUm; });
    const auto [low, high] = std::minmax_element(ring.begin(), ring.end(),
                                                 [](auto& p, auto& q) { return p.yUm < q.yUm; });
    const bool isTall = high->yUm - low->yUm > right->xUm - left->xUm;
    struct Extent {
        std::int64_t from;
        std::int64_t to;
        std::size_t side;
    };
    std::vector<Extent> extents(n);
    for (std::size_t k = 0; k < n; ++k) {
        const Side s = sideOf(ring, k);
        const auto [from, to] =
            isTall ? std::minmax(s.a.yUm, s.b.yUm) : std::minmax(s.a.xUm, s.b.xUm);
        extents[k] = {from, to, k};
    }
    std::sort(extents.begin(), extents.end(), [](const Extent& p, const Extent& q) {
        return p.from != q.from ? p.from < q.from : p.side < q.side;
    });
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t j = i + 1; j < n && extents[j].from <= extents[i].to; ++j) {
            if (!visit(extents[i].side, extents[j].side)) return;
        }
    }
}

std::int64_t squaredLength(const InkPoint& a, const InkPoint& b) {
    return (b.xUm - a.xUm) * (b.xUm - a.xUm) + (b.yUm - a.yUm) * (b.yUm - a.yUm);
}

// The ring with every corner that lies on another side made a corner of that side too.
InkRing withTouchesAsCorners(const InkRing& ring) {
    const std::size_t n = ring.size();
    std::vector<InkRing> onSide(n);
    const auto note = [&](std::size_t side, std::size_t corner) {
        const Side s = sideOf(ring, side);
        const InkPoint& p = ring[corner];
        if (p != s.a && p != s.b && liesOn(p, s)) onSide[side].push_back(p);
    };
    visitOverlapping(ring, [&](std::size_t i, std::size_t j) {
        note(i, j);
        note(i, (j + 1) % n);
        note(j, i);
        note(j, (i + 1) % n);
        return true;
    });
    InkRing full;
    for (std::size_t k = 0; k < n; ++k) {
        const InkPoint& a = ring[k];
        if (full.empty() || full.back() != a) full.push_back(a);
        std::sort(onSide[k].begin(), onSide[k].end(), [&](const InkPoint& p, const InkPoint& q) {
            return squaredLength(a, p) < squaredLength(a, q);
        });
        for (const InkPoint& p : onSide[k]) {
            if (full.back() != p) full.push_back(p);
        }
    }
    return full;
}

}  // namespace

InkPoint onInkGrid(const Point& p) {
    return {std::llround(p.x() / tolerance::kInkGridMm),
            std::llround(p.y() / tolerance::kInkGridMm)};
}

Point inMillimetres(const InkPoint& p) {
    constexpr double kPerMm = 1000;
    static_assert(kPerMm * tolerance::kInkGridMm == 1);
    return {static_cast<double>(p.xUm) / kPerMm, static_cast<double>(p.yUm) / kPerMm};
}

std::int64_t doubleAreaUm2(const InkRing& ring) {
    std::int64_t sum = 0;
    for (std::size_t k = 1; k + 1 < ring.size(); ++k) sum += turnAt(ring[0], ring[k], ring[k + 1]);
    return sum;
}

InkRing withoutStraightCorners(const InkRing& ring) {
    InkRing kept;
    kept.reserve(ring.size());
    const auto isNoCorner = [](const InkPoint& a, const InkPoint& p, const InkPoint& b) {
        return p == b || (a != b && liesOn(p, {a, b}));
    };
    for (const InkPoint& p : ring) {
        while (kept.size() > 1 && isNoCorner(kept[kept.size() - 2], kept.back(), p))
            kept.pop_back();
        if (kept.empty() || kept.back() != p) kept.push_back(p);
    }
    while (kept.size() > 2 && isNoCorner(kept[kept.size() - 2], kept.back(), kept.front())) {
        kept.pop_back();
    }
    while (kept.size() > 2 && isNoCorner(kept.back(), kept.front(), kept[1])) {
        kept.erase(kept.begin());
    }
    return kept;
}

bool isSimple(const InkRing& ring) {
    const std::size_t n = ring.size();
    if (n < 3) return false;
    bool simple = true;
    visitOverlapping(ring, [&](std::size_t i, std::size_t j) {
        if ((i + 1) % n == j) {
            simple = isNeighbourSound(sideOf(ring, i), sideOf(ring, j));
        } else if ((j + 1) % n == i) {
            simple = isNeighbourSound(sideOf(ring, j), sideOf(ring, i));
        } else {
            simple = !meet(sideOf(ring, i), sideOf(ring, j));
        }
        return simple;
    });
    return simple;
}

InkRing largestPartAtTouches(const InkRing& ring) {
    InkRing open;  // the way walked so far, without the loops already cut off
    std::map<InkPoint, std::size_t> placeOf;
    InkRing largest;
    const auto keepLarger = [&](InkRing part) {
        if (std::llabs(doubleAreaUm2(part)) > std::llabs(doubleAreaUm2(largest))) {
            largest = std::move(part);
        }
    };
    for (const InkPoint& p : withTouchesAsCorners(ring)) {
        if (const auto seen = placeOf.find(p); seen != placeOf.end()) {
            const auto from = open.begin() + static_cast<std::ptrdiff_t>(seen->second);
            for (auto it = from + 1; it != open.end(); ++it) placeOf.erase(*it);
            keepLarger(InkRing(from, open.end()));
            open.erase(from + 1, open.end());
            continue;
        }
        placeOf[p] = open.size();
        open.push_back(p);
    }
    keepLarger(std::move(open));
    return largest;
}

}  // namespace coutil
