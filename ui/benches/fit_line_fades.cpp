#include "ui/benches/fit_line_fades.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <limits>

#include "core/alterations/line_of_half.h"
#include "ui/canvas/painter_path.h"

namespace coutil {

namespace {

constexpr double kShortestFadeMm = 5;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(FitScene)
};

// A line with its first and last reading, mm along it from centre front.
struct ReadLine {
    LineOfHalf half;
    double firstMm = std::numeric_limits<double>::infinity();
    double lastMm = -std::numeric_limits<double>::infinity();
};

std::optional<ReadLine> readLine(const Pattern& pattern, const ReshapeEdge& change, BodySide side) {
    auto halves = linesOfHalves(pattern, side, change.line);
    if (halves.empty() || change.amounts.empty()) return std::nullopt;
    ReadLine read;
    read.half = std::move(halves.front());
    for (const LineAmount& each : change.amounts) {
        const auto atMm = positionOf(pattern, read.half, each.place);
        if (!atMm) return std::nullopt;
        read.firstMm = std::min(read.firstMm, *atMm);
        read.lastMm = std::max(read.lastMm, *atMm);
    }
    return read;
}

QPointF onTable(const Pattern& pattern, const LineOfHalf& half,
                const std::vector<Placement>& placements, double alongMm) {
    const double atMm = std::clamp(alongMm, 0.0, half.panels.back().toMm);
    const auto found = std::ranges::find_if(
        half.panels, [&](const PanelOnLine& each) { return atMm <= each.toMm; });
    const PanelOnLine& each = found == half.panels.end() ? half.panels.back() : *found;
    const Path path = rightwardsOf(pattern.panels[each.panel], each.place);
    return painterPoint(placed(pointAtLength(path, atMm - each.fromMm), placements[each.panel]));
}

double alongLine(const Pattern& pattern, const LineOfHalf& half,
                 const std::vector<Placement>& placements, const QPointF& mm) {
    double nearestMm = std::numeric_limits<double>::infinity();
    double alongMm = 0;
    for (const PanelOnLine& each : half.panels) {
        const Path path = rightwardsOf(pattern.panels[each.panel], each.place);
        const auto near = closestOn(path, Point(mm.x(), mm.y()) - placements[each.panel].shift);
        if (std::abs(near.distanceMm) >= nearestMm) continue;
        nearestMm = std::abs(near.distanceMm);
        alongMm = each.fromMm + lengthToMm(path, near.position);
    }
    return alongMm;
}

}  // namespace

std::vector<SceneHandle> lineFadeHandles(const Pattern& pattern, const ReshapeEdge& change,
                                         BodySide side, const std::vector<Placement>& placements) {
    std::vector<SceneHandle> handles;
    const auto read = readLine(pattern, change, side);
    if (!read) return handles;
    if (const auto over = change.towardsFront.overMm) {
        handles.push_back({QLatin1String(kFadeFrontHandle),
                           onTable(pattern, read->half, placements, read->firstMm - *over),
                           Words::tr("Drag along the edge: where the change ends to the front")});
    }
    if (const auto over = change.towardsBack.overMm) {
        handles.push_back({QLatin1String(kFadeBackHandle),
                           onTable(pattern, read->half, placements, read->lastMm + *over),
                           Words::tr("Drag along the edge: where the change ends to the back")});
    }
    return handles;
}

std::optional<ReshapeEdge> lineFadeDragged(const Pattern& pattern, const ReshapeEdge& change,
                                           BodySide side, const std::vector<Placement>& placements,
                                           const std::string& handle, const QPointF& mm) {
    const auto read = readLine(pattern, change, side);
    const bool isFront = handle == kFadeFrontHandle;
    if (!read || (!isFront && handle != kFadeBackHandle)) return std::nullopt;
    const double atMm = alongLine(pattern, read->half, placements, mm);
    const double overMm = isFront ? read->firstMm - atMm : atMm - read->lastMm;
    ReshapeEdge after = change;
    (isFront ? after.towardsFront : after.towardsBack).overMm =
        std::max(kShortestFadeMm, std::round(overMm));
    return after;
}

}  // namespace coutil
