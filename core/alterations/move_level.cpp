// Moving a level with the shape that belongs to it, and the distance of the bust points.
#include <algorithm>
#include <cmath>
#include <optional>

#include "core/alterations/alteration_kinds.h"
#include "core/alterations/change_problem.h"
#include "core/alterations/find_places.h"
#include "core/alterations/height_warp.h"
#include "core/alterations/settle.h"

namespace coutil {
namespace {

constexpr const char* kKind = "move_level";
// What is pressed together keeps at least a tenth of its height everywhere; what is drawn out, so
// much that the way back does too.
constexpr double kMostPressed = 0.9 / kSteepestRise;
constexpr double kMostDrawn = kMostPressed / (1 - kMostPressed);

// The level with its neighbours, which stay.
struct Span {
    double lowestMm = 0;
    double atMm = 0;
    double highestMm = 0;

    // 1 at the level, 0 at the neighbours and beyond.
    [[nodiscard]] HeightValue swellingAt(double heightMm) const {
        const bool isBelow = heightMm < atMm;
        const double spanMm = isBelow ? atMm - lowestMm : highestMm - atMm;
        const double share =
            isBelow ? (heightMm - lowestMm) / spanMm : (highestMm - heightMm) / spanMm;
        const HeightValue rise = smoothRise(share);
        return {rise.valueMm, rise.perMm / (isBelow ? spanMm : -spanMm)};
    }
};

// Where the panels end: the lowest top corner and the highest bottom corner.
Span cornersOf(const Pattern& pattern) {
    Span span{-1e9, 0, 1e9};
    for (const Panel& panel : pattern.panels) {
        const auto edges = longEdgesOf(panel);
        if (!edges) continue;
        for (const std::size_t e : {edges->front, edges->back}) {
            const Box box = boundsOf(panel.edges[e].path);
            span.lowestMm = std::max(span.lowestMm, box.lowest.y());
            span.highestMm = std::min(span.highestMm, box.highest.y());
        }
    }
    return span;
}

std::optional<Span> spanOf(const Pattern& pattern, const Level& level) {
    Span span = cornersOf(pattern);
    if (level.heightMm >= span.highestMm || level.heightMm <= span.lowestMm) return std::nullopt;
    span.atMm = level.heightMm;
    bool hasAbove = false;
    bool hasBelow = false;
    for (const Level& other : pattern.levels) {
        // The maker's own levels are marks, not shape.
        if (!other.bodyMm && other.name != "waist") continue;
        if (other.heightMm > level.heightMm) {
            span.highestMm = hasAbove ? std::min(span.highestMm, other.heightMm) : other.heightMm;
            hasAbove = true;
        }
        if (other.heightMm < level.heightMm) {
            span.lowestMm = hasBelow ? std::max(span.lowestMm, other.heightMm) : other.heightMm;
            hasBelow = true;
        }
    }
    return span;
}

// The seam over the bust point on every side: the one between the first two panels.
std::vector<std::size_t> bustSeams(const Pattern& pattern, BodySide side) {
    std::vector<std::size_t> named = seamsNamed(pattern, "1-2", side);
    if (!named.empty()) return named;
    for (std::size_t s = 0; s < pattern.seams.size(); ++s) {
        const PanelSide panelSide = pattern.panels[pattern.seams[s].front.panel].side;
        const bool isSeen = std::ranges::any_of(named, [&](std::size_t other) {
            return pattern.panels[pattern.seams[other].front.panel].side == panelSide;
        });
        if (!isSeen && concerns(side, panelSide)) named.push_back(s);
    }
    return named;
}

void warpEdge(Pattern& pattern, const EdgeRef& ref, const HeightWarp& warp) {
    Edge& edge = pattern.panels[ref.panel].edges[ref.edge];
    edge.path = warped(edge.path, warp);
}

HeightWarp upWarpOf(const Span& span, double upMm) {
    HeightWarp warp;
    warp.lowestMm = span.lowestMm;
    warp.highestMm = span.highestMm;
    // Downwards is the way back of upwards from the lower place: so one undoes the other.
    Span from = span;
    if (upMm < 0) from.atMm += upMm;
    const double mm = std::abs(upMm);
    const auto upwards = [from, mm](double y) {
        const HeightValue swelling = from.swellingAt(y);
        return HeightValue{y + mm * swelling.valueMm, 1 + mm * swelling.perMm};
    };
    if (upMm > 0) {
        warp.height = upwards;
    } else {
        warp.height = [upwards, mm](double y) { return wayBack(upwards, y, y - mm, y); };
    }
    return warp;
}

// Sideways from the level below, all of it at the level, and on to the top: over the bust the seam
// runs beside its old line.
HeightWarp asideWarpOf(const Span& span, double asideMm) {
    HeightWarp warp;
    warp.lowestMm = span.lowestMm;
    warp.height = [](double y) { return HeightValue{y, 1}; };
    warp.sideways = [span, asideMm](double y) {
        const HeightValue rise = y < span.atMm ? span.swellingAt(y) : HeightValue{1, 0};
        return HeightValue{asideMm * rise.valueMm, asideMm * rise.perMm};
    };
    return warp;
}

void moveUp(Pattern& pattern, BodySide side, const Span& span, double upMm) {
    for (std::size_t p = 0; p < pattern.panels.size(); ++p) {
        const auto edges = longEdgesOf(pattern.panels[p]);
        if (!edges || !concerns(side, pattern.panels[p].side)) continue;
        for (const std::size_t e : {edges->front, edges->back})
            warpEdge(pattern, {p, e}, upWarpOf(span, upMm));
    }
}

void moveAside(Pattern& pattern, BodySide side, const Span& span, double asideMm) {
    if (asideMm == 0) return;
    for (const std::size_t s : bustSeams(pattern, side)) {
        const Seam seam = pattern.seams[s];
        for (const EdgeRef& ref : {seam.front, seam.back})
            warpEdge(pattern, ref, asideWarpOf(span, asideMm));
    }
}

Problems check(const MoveLevel& change, const Span& span) {
    const double aboveMm = span.highestMm - span.atMm;
    const double belowMm = span.atMm - span.lowestMm;
    const double limitMm = change.upMm > 0 ? std::min(kMostPressed * aboveMm, kMostDrawn * belowMm)
                                           : std::min(kMostPressed * belowMm, kMostDrawn * aboveMm);
    if (std::abs(change.upMm) > limitMm) return tooLarge(kKind, change.level, change.upMm, limitMm);
    constexpr double kMostWiderMm = 60;
    if (std::abs(change.widerMm) > kMostWiderMm)
        return tooLarge(kKind, change.level, change.widerMm, kMostWiderMm);
    return {};
}

}  // namespace

Problems moveLevel(Pattern& pattern, BodySide side, const MoveLevel& change) {
    if (!isSoundMm(change.upMm) || !isSoundMm(change.widerMm)) return badValue(kKind, change.level);
    const auto level = std::ranges::find(pattern.levels, change.level, &Level::name);
    if (level == pattern.levels.end()) return unfit(kKind, change.level);
    // The waist is the zero of every seam; the bust points lie at the bust.
    if (change.level == "waist" || (change.widerMm != 0 && change.level != "bust"))
        return badValue(kKind, change.level);
    const auto span = spanOf(pattern, *level);
    if (!span) return unfit(kKind, change.level);
    if (Problems problems = check(change, *span); !problems.empty()) return problems;

    Pattern changed = pattern;
    // Wider where the level is lower, so that the opposite finds the same place.
    if (change.upMm >= 0) moveAside(changed, side, *span, change.widerMm / 2);
    if (change.upMm != 0) moveUp(changed, side, *span, change.upMm);
    if (change.upMm < 0) {
        Span lower = *span;
        lower.atMm += change.upMm;
        moveAside(changed, side, lower, change.widerMm / 2);
    }
    const bool isOneSided =
        side != BodySide::both && pattern.panels.front().side != PanelSide::both;
    if (!isOneSided) {
        const auto index = static_cast<std::size_t>(level - pattern.levels.begin());
        changed.levels[index].heightMm += change.upMm;
        // The maker's own levels between go with the shape.
        for (Level& other : changed.levels) {
            if (other.bodyMm || other.name == change.level) continue;
            other.heightMm += change.upMm * span->swellingAt(other.heightMm).valueMm;
        }
    }
    settle(pattern, changed);
    pattern = std::move(changed);
    return {};
}

}  // namespace coutil
