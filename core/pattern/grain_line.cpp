#include "core/pattern/grain_line.h"

#include <algorithm>
#include <limits>

namespace coutil {
namespace {

constexpr double kClearMm = 4;
constexpr int kSteps = 12;

// How far from the waist towards `endMm` the line stays clear of both long edges.
double clearReachMm(double endMm, const std::function<double(double)>& clearMm) {
    constexpr double kPart = 0.6;
    double reachMm = 0;
    for (int step = 1; step <= kSteps; ++step) {
        const double y = kPart * endMm * step / kSteps;
        if (clearMm(y) < kClearMm) break;
        reachMm = y;
    }
    return reachMm;
}

double clearInPanelMm(const Panel& panel, double xMm, double heightMm) {
    const auto crossing = crossingAtHeight(panel, heightMm);
    if (!crossing) return -std::numeric_limits<double>::infinity();
    return std::min(xMm - crossing->front.x(), crossing->back.x() - xMm);
}

bool isClear(const Panel& panel) {
    const auto& [lower, upper] = panel.grain;
    constexpr int kLooks = 6;
    for (int look = 0; look <= kLooks; ++look) {
        const Point at = lower + (upper - lower) * look / kLooks;
        if (clearInPanelMm(panel, at.x(), at.y()) < kClearMm) return false;
    }
    return true;
}

}  // namespace

std::array<Point, 2> grainLineAt(double xMm, double lowestMm, double highestMm,
                                 const std::function<double(double)>& clearMm) {
    return {Point(xMm, clearReachMm(lowestMm, clearMm)),
            Point(xMm, clearReachMm(highestMm, clearMm))};
}

void keepGrainInside(Panel& panel) {
    if (isClear(panel)) return;
    const auto waist = crossingAtHeight(panel, 0);
    if (!waist) return;
    const Box box = boundsOf(outlineOf(panel));
    const double x = (waist->front.x() + waist->back.x()) / 2;
    panel.grain = grainLineAt(x, box.lowest.y(), box.highest.y(),
                              [&](double y) { return clearInPanelMm(panel, x, y); });
}

}  // namespace coutil
