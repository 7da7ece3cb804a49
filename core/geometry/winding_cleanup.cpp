#include "core/geometry/winding_cleanup.h"

#include <algorithm>
#include <cstdlib>
#include <utility>

#include <polyclipping/clipper.hpp>

#include "core/geometry/tolerances.h"

namespace coutil {

namespace {

namespace clip = ClipperLib;

constexpr int kMostRepairs = 3;

std::vector<InkRing> positiveRings(const InkRing& loop) {
    clip::Path raw;
    raw.reserve(loop.size());
    for (const InkPoint& p : loop) raw.emplace_back(p.xUm, p.yUm);
    clip::Paths cleaned;
    clip::SimplifyPolygon(raw, cleaned, clip::pftPositive);
    std::vector<InkRing> rings;
    for (const clip::Path& path : cleaned) {
        InkRing& ring = rings.emplace_back();
        ring.reserve(path.size());
        for (const clip::IntPoint& p : path) ring.push_back({p.X, p.Y});
    }
    return rings;
}

LeftOutPart partFrom(const InkRing& ring) {
    const auto [left, right] = std::minmax_element(ring.begin(), ring.end(),
                                                   [](auto& p, auto& q) { return p.xUm < q.xUm; });
    const auto [low, high] = std::minmax_element(ring.begin(), ring.end(),
                                                 [](auto& p, auto& q) { return p.yUm < q.yUm; });
    const auto longer = std::max(right->xUm - left->xUm, high->yUm - low->yUm);
    constexpr double kStep = tolerance::kInkGridMm;
    return {inMillimetres(ring.front()), static_cast<double>(longer) * kStep,
            static_cast<double>(std::llabs(doubleAreaUm2(ring))) / 2 * kStep * kStep};
}

// Moves the largest ring to cleaned.outer and notes the others.
void takeLargest(std::vector<InkRing> rings, CleanedLoop& cleaned) {
    const auto largest = std::max_element(
        rings.begin(), rings.end(),
        [](const InkRing& a, const InkRing& b) { return doubleAreaUm2(a) < doubleAreaUm2(b); });
    if (largest == rings.end() || doubleAreaUm2(*largest) <= 0) {
        cleaned.outer.clear();
        return;
    }
    for (auto it = rings.begin(); it != rings.end(); ++it) {
        if (it == largest) continue;
        LeftOutPart part = partFrom(*it);
        if (part.areaMm2 > tolerance::kSliverMm2) cleaned.leftOut.push_back(part);
    }
    cleaned.outer = std::move(*largest);
}

}  // namespace

CleanedLoop positiveRegion(const std::vector<Point>& rawLoop) {
    InkRing loop;
    loop.reserve(rawLoop.size());
    for (const Point& p : rawLoop) loop.push_back(onInkGrid(p));
    loop = withoutStraightCorners(loop);
    CleanedLoop cleaned;
    cleaned.wasClean = isSimple(loop) && doubleAreaUm2(loop) > 0;
    if (cleaned.wasClean) {
        cleaned.outer = std::move(loop);
        return cleaned;
    }
    takeLargest(positiveRings(loop), cleaned);
    // Rounding crossings to the grid can leave a ring touching or crossing itself by one step: two
    // of the 20,000 random outlines of the tests. Parted there, and cleaned once more, it is
    // simple.
    for (int k = 0; k < kMostRepairs && !cleaned.outer.empty() && !isSimple(cleaned.outer); ++k) {
        takeLargest({largestPartAtTouches(cleaned.outer)}, cleaned);
        if (isSimple(cleaned.outer)) break;
        takeLargest(positiveRings(cleaned.outer), cleaned);
    }
    if (!cleaned.outer.empty() && !isSimple(cleaned.outer)) cleaned.outer.clear();
    return cleaned;
}

}  // namespace coutil
