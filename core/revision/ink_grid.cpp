#include "core/revision/ink_grid.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/tolerances.h"
#include "core/revision/ink.h"
#include "core/revision/ink_room.h"

namespace coutil {
namespace {

// A thousand steps a millimetre; whole, so that the division below rounds once.
constexpr double kStepsPerMm = 1000;
static_assert(kStepsPerMm * tolerance::kInkGridMm == 1);

void toGrid(double& mm) { mm = mmOfInkSteps(inkStepsOf(mm)); }

void toGrid(std::optional<double>& mm) {
    if (mm) toGrid(*mm);
}

void toGrid(Point& point) {
    toGrid(point.x());
    toGrid(point.y());
}

void toGrid(Path& path) {
    for (Cubic& piece : path.pieces) {
        for (Point* point : {&piece.p0, &piece.p1, &piece.p2, &piece.p3}) toGrid(*point);
    }
    for (std::size_t i = 1; i < path.pieces.size(); ++i) path.pieces[i].p0 = path.pieces[i - 1].p3;
}

bool isSamePoint(const Point& a, const Point& b) {
    return (a - b).norm() < tolerance::kSamePointMm;
}

// Two ends that were one corner but for rounding could fall to different sides of a half step.
void shareCorners(std::vector<Edge>& edges, const std::vector<Edge>& before) {
    for (std::size_t i = 0; i < edges.size(); ++i) {
        const std::size_t next = (i + 1) % edges.size();
        if (edges[i].path.isEmpty() || edges[next].path.isEmpty()) continue;
        if (isSamePoint(before[i].path.end(), before[next].path.start()))
            edges[next].path.pieces.front().p0 = edges[i].path.end();
    }
}

void toGrid(Panel& panel) {
    const std::vector<Edge> before = panel.edges;
    for (Edge& edge : panel.edges) {
        toGrid(edge.path);
        toGrid(edge.waistMarkAtMm);
    }
    shareCorners(panel.edges, before);
    for (LevelLine& line : panel.levels) {
        toGrid(line.front);
        toGrid(line.back);
    }
    for (Point& point : panel.grain) toGrid(point);
}

void toGrid(Level& level) {
    toGrid(level.heightMm);
    toGrid(level.bodyMm);
    toGrid(level.targetMm);
    toGrid(level.patternMm);
    toGrid(level.lacingGapMm);
}

bool isInkable(double mm) { return std::abs(mm) < mmOfInkSteps(kMostInkSteps); }  // false for NaN

bool isInkable(const Point& point) { return isInkable(point.x()) && isInkable(point.y()); }

bool isInkable(const std::optional<double>& mm) { return !mm || isInkable(*mm); }

bool isInkable(const Path& path) {
    return !path.isEmpty() && std::ranges::all_of(path.pieces, [](const Cubic& piece) {
        return isInkable(piece.p0) && isInkable(piece.p1) && isInkable(piece.p2) &&
               isInkable(piece.p3);
    });
}

bool isInkable(const Panel& panel) {
    return std::ranges::all_of(panel.edges,
                               [](const Edge& edge) {
                                   return isInkable(edge.path) && isInkable(edge.waistMarkAtMm);
                               }) &&
           std::ranges::all_of(panel.levels,
                               [](const LevelLine& line) {
                                   return isInkable(line.front) && isInkable(line.back);
                               }) &&
           isInkable(panel.grain[0]) && isInkable(panel.grain[1]);
}

bool isInkable(const Level& level) {
    return isInkable(level.heightMm) && isInkable(level.bodyMm) && isInkable(level.targetMm) &&
           isInkable(level.patternMm) && isInkable(level.lacingGapMm);
}

}  // namespace

std::int64_t inkStepsOf(double mm) {
    if (std::isnan(mm)) return 0;
    const double steps = std::round(mm * kStepsPerMm);
    return static_cast<std::int64_t>(
        std::clamp(steps, -static_cast<double>(kMostInkSteps), static_cast<double>(kMostInkSteps)));
}

double mmOfInkSteps(std::int64_t steps) { return static_cast<double>(steps) / kStepsPerMm; }

bool isInkable(const Pattern& pattern) {
    return std::ranges::all_of(pattern.panels,
                               [](const Panel& panel) { return isInkable(panel); }) &&
           std::ranges::all_of(pattern.seams,
                               [](const Seam& seam) { return isInkable(seam.easeMm); }) &&
           std::ranges::all_of(pattern.levels,
                               [](const Level& level) { return isInkable(level); }) &&
           std::ranges::all_of(pattern.estimates,
                               [](const Estimate& estimate) {
                                   return isInkable(estimate.valueMm) && isInkable(estimate.sdMm);
                               }) &&
           isInkable(pattern.lacingGapMm);
}

Pattern onInkGrid(const Pattern& pattern) {
    Pattern inked = pattern;
    for (Panel& panel : inked.panels) {
        for (Edge& edge : panel.edges) edge.path = withRoomForInk(edge.path);
        toGrid(panel);
    }
    for (Seam& seam : inked.seams) toGrid(seam.easeMm);
    for (Level& level : inked.levels) toGrid(level);
    toGrid(inked.lacingGapMm);
    for (Estimate& estimate : inked.estimates) {
        toGrid(estimate.valueMm);
        toGrid(estimate.sdMm);
    }
    return inked;
}

}  // namespace coutil
