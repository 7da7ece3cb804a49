#include "core/sheets/change_strip.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/tolerances.h"

namespace coutil {
namespace {

constexpr double kBesideMm = 12;    // of the unchanged line, to either side
constexpr double kLevelMm = 6;      // beyond a level
constexpr double kTogetherMm = 25;  // strips nearer than this are one

LaidPanel laid(const Panel& panel, const Placement& placement) {
    LaidPanel lines{panel.edges, panel.levels, panel.grain};
    for (Edge& edge : lines.edges) edge.path = placed(edge.path, placement);
    for (LevelLine& level : lines.levels) {
        level.front = placed(level.front, placement);
        level.back = placed(level.back, placement);
    }
    for (Point& end : lines.grain) end = placed(end, placement);
    return lines;
}

void addStretches(const LaidPanel& panel, const std::vector<ChangedStretch>& stretches,
                  std::vector<Strip>& strips) {
    for (const ChangedStretch& stretch : stretches) {
        const Path& path = panel.edges[stretch.edge].path;
        Box box;
        box.include(pointAtLength(path, stretch.fromMm));
        if (stretch.toMm > stretch.fromMm)
            box.include(boundsOf(betweenLengths(path, stretch.fromMm, stretch.toMm)));
        strips.push_back({box.lowest.y() - kBesideMm, box.highest.y() + kBesideMm});
    }
}

std::vector<LevelLine> levelsOf(const LaidChange& laid) {
    std::vector<LevelLine> levels;
    for (const auto* panel : {&laid.old, &laid.now}) {
        if (*panel) levels.insert(levels.end(), (*panel)->levels.begin(), (*panel)->levels.end());
    }
    return levels;
}

// Out to the level that is nearest, where none is inside.
void reachLevel(const std::vector<LevelLine>& levels, Strip& strip) {
    const auto awayMm = [&](const LevelLine& level) {
        const double y = level.front.y();
        return std::max({0.0, strip.fromMm + kLevelMm - y, y - strip.toMm + kLevelMm});
    };
    const auto nearest =
        std::ranges::min_element(levels, std::less<>(), [&](const auto& l) { return awayMm(l); });
    if (nearest == levels.end()) return;
    strip.fromMm = std::min(strip.fromMm, nearest->front.y() - kLevelMm);
    strip.toMm = std::max(strip.toMm, nearest->front.y() + kLevelMm);
}

std::vector<Strip> merged(std::vector<Strip> strips) {
    std::ranges::sort(strips, std::less<>(), &Strip::fromMm);
    std::vector<Strip> one;
    for (const Strip& strip : strips) {
        if (!one.empty() && strip.fromMm - one.back().toMm < kTogetherMm) {
            one.back().toMm = std::max(one.back().toMm, strip.toMm);
        } else {
            one.push_back(strip);
        }
    }
    return one;
}

Strip wholeOf(const LaidPanel& panel) {
    Box box;
    for (const Edge& edge : panel.edges) {
        if (!edge.path.isEmpty()) box.include(boundsOf(edge.path));
    }
    return {box.lowest.y() - kLevelMm, box.highest.y() + kLevelMm};
}

}  // namespace

LaidChange laidChange(const Pattern& a, const Pattern& b, const PanelChange& change) {
    const bool isMirrored = change.side == PanelSide::right;
    Vector shift = change.shiftOfB;
    if (isMirrored) shift.x() = -shift.x();
    LaidChange both;
    if (change.inA) both.old = laid(a.panels[*change.inA], {0, Vector::Zero(), isMirrored});
    if (change.inB) both.now = laid(b.panels[*change.inB], {0, shift, isMirrored});
    return both;
}

std::vector<Strip> stripsOf(const LaidChange& laid, const PanelChange& change) {
    if (!laid.now) return {};
    if (!laid.old) return {wholeOf(*laid.now)};
    std::vector<Strip> strips;
    addStretches(*laid.old, change.ofA, strips);
    addStretches(*laid.now, change.ofB, strips);
    const std::vector<LevelLine> levels = levelsOf(laid);
    for (const LevelLine& level : levels) {
        if (std::ranges::find(change.movedLevels, level.level) == change.movedLevels.end())
            continue;
        strips.push_back({level.front.y() - kBesideMm, level.front.y() + kBesideMm});
    }
    strips = merged(std::move(strips));
    for (Strip& strip : strips) reachLevel(levels, strip);
    return merged(std::move(strips));
}

std::vector<Path> between(const Path& path, const Strip& strip) {
    if (path.isEmpty()) return {};
    const double whole = lengthMm(path);
    std::vector<double> cutsMm{0, whole};
    for (const double height : {strip.fromMm, strip.toMm}) {
        for (const PathPosition& at : crossingsAtHeight(path, height)) {
            cutsMm.push_back(lengthToMm(path, at));
        }
    }
    std::ranges::sort(cutsMm);
    std::vector<Path> parts;
    for (std::size_t i = 0; i + 1 < cutsMm.size(); ++i) {
        if (cutsMm[i + 1] - cutsMm[i] < tolerance::kSamePointMm) continue;
        const double y = pointAtLength(path, (cutsMm[i] + cutsMm[i + 1]) / 2).y();
        if (y >= strip.fromMm && y <= strip.toMm)
            parts.push_back(betweenLengths(path, cutsMm[i], cutsMm[i + 1]));
    }
    return parts;
}

}  // namespace coutil
