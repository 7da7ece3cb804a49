#include "core/tracing/label_room.h"

#include <algorithm>
#include <cmath>

#include "core/block/style.h"
#include "core/geometry/path.h"

namespace coutil {

namespace {

constexpr double kFullWidthMm = 60;
constexpr double kFullHeightMm = 25;
constexpr double kTooSmall = 0.5;  // of full size
constexpr double kLargestNumberMm = 40;
constexpr double kFlatnessMm = 0.2;  // well within the clearance

// A level strip of the panel that is free from left to right all the way up.
struct Band {
    double lowMm = 0;
    double highMm = 0;
    double leftMm = -1e9;
    double rightMm = 1e9;
};

// The panel in bands, each as wide as it is free: everything right of all outline running down and
// left of all outline running up. Where the outline runs across a band nothing is left of it.
std::vector<Band> bandsOf(const Path& outline) {
    const std::vector<Point> points = flattened(outline, kFlatnessMm);
    Box box;
    for (const Point& p : points) box.include(p);
    std::vector<Band> bands;
    for (double low = box.lowest.y(); low + kLabelBandMm <= box.highest.y(); low += kLabelBandMm) {
        bands.push_back({low, low + kLabelBandMm});
    }
    const auto bandOf = [&](double y) {
        const double k = std::floor((y - box.lowest.y()) / kLabelBandMm);
        return static_cast<std::size_t>(std::clamp(k, 0.0, double(bands.size()) - 1));
    };
    for (std::size_t k = 0; k + 1 < points.size() && !bands.empty(); ++k) {
        const Point& a = points[k];
        const Point& b = points[k + 1];
        const double low = std::min(a.y(), b.y());
        const double high = std::max(a.y(), b.y());
        const std::size_t last = bandOf(high + kLabelClearMm);
        for (std::size_t n = bandOf(low - kLabelClearMm); n <= last; ++n) {
            Band& band = bands[n];
            const auto xAt = [&](double y) {
                if (a.y() == b.y()) return y <= low ? a.x() : b.x();
                const double share = (std::clamp(y, low, high) - a.y()) / (b.y() - a.y());
                return a.x() + share * (b.x() - a.x());
            };
            const double atLow = xAt(band.lowMm);
            const double atHigh = xAt(band.highMm);
            if (b.y() <= a.y()) band.leftMm = std::max({band.leftMm, atLow, atHigh});
            if (b.y() >= a.y()) band.rightMm = std::min({band.rightMm, atLow, atHigh});
        }
    }
    for (Band& band : bands) {
        band.leftMm += kLabelClearMm;
        band.rightMm -= kLabelClearMm;
    }
    return bands;
}

Box widened(Box box) {
    box.lowest -= Point::Constant(kLabelClearMm);
    box.highest += Point::Constant(kLabelClearMm);
    return box;
}

Box boxAround(const Point& a, const Point& b) {
    Box box;
    box.include(a);
    box.include(b);
    return widened(box);
}

// Offers every free rectangle that cannot grow sideways to take(box): for each run of bands the
// gaps between the obstacles that reach into it. Obstacles from left to right.
template <class Take>
void visitFree(const std::vector<Band>& bands, const std::vector<Box>& obstacles,
               const Take& take) {
    for (std::size_t from = 0; from < bands.size(); ++from) {
        double left = -1e9;
        double right = 1e9;
        for (std::size_t to = from; to < bands.size(); ++to) {
            left = std::max(left, bands[to].leftMm);
            right = std::min(right, bands[to].rightMm);
            double free = left;
            const auto offer = [&](double end) {
                if (end > free) take(Box{{free, bands[from].lowMm}, {end, bands[to].highMm}});
            };
            for (const Box& box : obstacles) {
                if (box.lowest.y() >= bands[to].highMm || box.highest.y() <= bands[from].lowMm) {
                    continue;
                }
                offer(std::min(right, box.lowest.x()));
                free = std::max(free, box.highest.x());
            }
            offer(right);
            // Higher runs are no wider; once a level or the outline closes this one none is free.
            if (free >= right) break;
        }
    }
}

void sortFromLeft(std::vector<Box>& obstacles) {
    std::sort(obstacles.begin(), obstacles.end(),
              [](const Box& a, const Box& b) { return a.lowest.x() < b.lowest.x(); });
}

double sizeOf(const Box& box) {
    return std::min({1.0, box.widthMm() / kFullWidthMm, box.heightMm() / kFullHeightMm});
}

Box bestLabel(const std::vector<Band>& bands, const std::vector<Box>& obstacles) {
    Box best;
    double bestSize = 0;
    double bestArea = 0;
    visitFree(bands, obstacles, [&](const Box& box) {
        const double size = sizeOf(box);
        const double area = box.widthMm() * box.heightMm();
        if (size < bestSize || (size == bestSize && area <= bestArea)) return;
        best = box;
        bestSize = size;
        bestArea = area;
    });
    return best;
}

// The largest square, the higher up the better: a panel is told by its upper half.
Box bestNumber(const std::vector<Band>& bands, const std::vector<Box>& obstacles) {
    Box best;
    double bestSide = 0;
    visitFree(bands, obstacles, [&](const Box& box) {
        const double side = std::min({kLargestNumberMm, box.widthMm(), box.heightMm()});
        if (side < bestSide) return;
        bestSide = side;
        const Point centre = (box.lowest + box.highest) / 2;
        best = Box{centre - Point::Constant(side / 2), centre + Point::Constant(side / 2)};
    });
    return best;
}

std::vector<Box> obstaclesOf(const Panel& panel, bool onlyWaist) {
    std::vector<Box> obstacles;
    if (panel.grain[0] != panel.grain[1]) {
        obstacles.push_back(boxAround(panel.grain[0], panel.grain[1]));
    }
    for (const LevelLine& level : panel.levels) {
        const bool isWaist = level.level == keyOf(LevelId::waist);
        if (isWaist || !onlyWaist) obstacles.push_back(boxAround(level.front, level.back));
    }
    sortFromLeft(obstacles);
    return obstacles;
}

}  // namespace

LabelRoom labelRoomOf(const Panel& panel) {
    const std::vector<Band> bands = bandsOf(outlineOf(panel));
    std::vector<Box> obstacles = obstaclesOf(panel, false);
    LabelRoom room;
    room.label = bestLabel(bands, obstacles);
    if (room.label.isEmpty() || sizeOf(room.label) < kTooSmall) {
        const std::vector<Box> fewer = obstaclesOf(panel, true);
        const Box roomier = bestLabel(bands, fewer);
        const double had = room.label.isEmpty() ? 0 : sizeOf(room.label);
        if (!roomier.isEmpty() && sizeOf(roomier) > had) {
            room.label = roomier;
            obstacles = fewer;
        }
    }
    if (room.label.isEmpty()) return room;
    obstacles.push_back(widened(room.label));
    sortFromLeft(obstacles);
    room.number = bestNumber(bands, obstacles);
    return room;
}

}  // namespace coutil
