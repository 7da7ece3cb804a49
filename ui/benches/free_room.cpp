#include "ui/benches/free_room.h"

#include <algorithm>

namespace coutil {

namespace {

constexpr double kOffLinesMm = 4;

struct Span {
    double left = -1e9;
    double right = 1e9;
};

// What is inside the outline at all of the heights.
Span insideAt(const Path& outline, std::initializer_list<double> heights) {
    Span span;
    for (const double height : heights) {
        const auto crossings = crossingsAtHeight(outline, height);
        if (crossings.size() < 2) return {0, 0};
        Span here{1e9, -1e9};
        for (const PathPosition& crossing : crossings) {
            const double x = pointAt(outline, crossing).x();
            here = {std::min(here.left, x), std::max(here.right, x)};
        }
        span = {std::max(span.left, here.left), std::min(span.right, here.right)};
    }
    return span;
}

}  // namespace

QRectF freeRoom(const Path& outline, const std::vector<double>& levelHeightsMm) {
    const Box box = boundsOf(outline);
    std::vector<double> heights(levelHeightsMm);
    heights.push_back(box.lowest.y());
    heights.push_back(box.highest.y());
    std::sort(heights.begin(), heights.end());
    QRectF best;
    double bestWorth = 0;
    for (std::size_t i = 1; i < heights.size(); ++i) {
        const double low = heights[i - 1] + kOffLinesMm;
        const double high = heights[i] - kOffLinesMm;
        if (high <= low) continue;
        const Span span = insideAt(outline, {low, (low + high) / 2, high});
        const QRectF room(span.left + kOffLinesMm, low, span.right - span.left - 2 * kOffLinesMm,
                          high - low);
        // A number wants to be about as high as wide: the smaller side counts, then the height.
        const double worth = std::min(room.width(), room.height()) + room.height() / 16;
        if (worth <= bestWorth) continue;
        bestWorth = worth;
        best = room;
    }
    return best;
}

}  // namespace coutil
