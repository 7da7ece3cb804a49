#include "core/alterations/missing_line.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace coutil {
namespace {

constexpr double kStationsMm = 3;
constexpr double kEndStepMm = 0.75;
constexpr int kEndStations = 4;
constexpr double kReachMm = 60;
// An end nearer to its length than this is left alone.
constexpr double kNothingMm = 1e-6;
constexpr double kShortFadeMm = 5;

std::vector<double> sharesOf(double wholeMm) {
    std::vector<double> atMm;
    atMm.reserve(2 * kEndStations);
    const double endsMm = kEndStations * kEndStepMm;
    const double innerMm = wholeMm - 2 * endsMm;
    if (innerMm < endsMm) return {0, 0.25, 0.5, 0.75, 1};
    for (int k = 0; k < kEndStations; ++k) atMm.push_back(k * kEndStepMm);
    const int count = std::max(1, static_cast<int>(std::ceil(innerMm / kStationsMm)));
    for (int k = 0; k <= count; ++k) atMm.push_back(endsMm + innerMm * k / count);
    for (int k = kEndStations - 1; k >= 0; --k) atMm.push_back(wholeMm - k * kEndStepMm);
    for (double& mm : atMm) mm /= wholeMm;
    atMm.back() = 1;
    return atMm;
}

// By how much a long edge would have to end higher.
double missingAtCorner(const Edge& now, const Edge& wanted, bool isTop) {
    if (!now.waistMarkAtMm || !wanted.waistMarkAtMm) return 0;
    const SeamLengths a = seamLengthsOf(now);
    const SeamLengths b = seamLengthsOf(wanted);
    const double mm = isTop ? b.aboveWaistMm - a.aboveWaistMm : a.belowWaistMm - b.belowWaistMm;
    return std::abs(mm) < kNothingMm ? 0 : mm;
}

Path runOnBothWays(const Path& path) {
    const Point first = path.start() - kReachMm * tangentAt(path.pieces.front(), 0);
    const Point last = path.end() + kReachMm * tangentAt(path.pieces.back(), 1);
    return joined(joined(straightPath(first, path.start()), path), straightPath(path.end(), last));
}

double missingUp(const Point& from, const Vector& up, const Path& target) {
    double bestMm = kReachMm;
    for (const Meeting& meeting :
         meetingsOf(straightPath(from - kReachMm * up, from + kReachMm * up), target)) {
        const double mm = (meeting.point - from).dot(up) / up.squaredNorm();
        if (std::abs(mm) < std::abs(bestMm)) bestMm = mm;
    }
    return bestMm == kReachMm ? 0 : bestMm;
}

MissingLine::OfPanel missingOf(const Panel& now, const Panel& wanted, const PanelOnLine& each,
                               const MissingLine::OfPanel* like) {
    const Path line = rightwardsOf(now, each.place);
    const Path target = runOnBothWays(rightwardsOf(wanted, each.place));
    const PanelCorners corners = cornersOf(now, each.place);
    const double wholeMm = lengthMm(line);
    MissingLine::OfPanel missing{like ? like->shares : sharesOf(wholeMm), {}};
    for (const double share : missing.shares) {
        const Vector up = (1 - share) * corners.frontUp + share * corners.backUp;
        missing.upMm.push_back(missingUp(pointAtLength(line, share * wholeMm), up, target));
    }
    missing.upMm.front() = missingAtCorner(now.edges[each.place.front],
                                           wanted.edges[each.place.front], each.place.isTop);
    missing.upMm.back() = missingAtCorner(now.edges[each.place.back], wanted.edges[each.place.back],
                                          each.place.isTop);
    return missing;
}

}  // namespace

void MissingLine::scale(double by) {
    for (OfPanel& panel : panels)
        for (double& mm : panel.upMm) mm *= by;
}

void MissingLine::smooth() {
    for (OfPanel& panel : panels) {
        const std::vector<double> rough = panel.upMm;
        for (std::size_t k = 1; k + 1 < rough.size(); ++k)
            panel.upMm[k] = (rough[k - 1] + 2 * rough[k] + rough[k + 1]) / 4;
    }
}

void MissingLine::add(const MissingLine& more) {
    for (std::size_t i = 0; i < panels.size(); ++i) {
        for (std::size_t k = 0; k < panels[i].upMm.size(); ++k)
            panels[i].upMm[k] += more.panels[i].upMm[k];
    }
}

double MissingLine::worstMm() const {
    double mostMm = 0;
    for (const OfPanel& panel : panels)
        for (const double mm : panel.upMm) mostMm = std::max(mostMm, std::abs(mm));
    return mostMm;
}

MissingLine missingLine(const Pattern& now, const Pattern& wanted, const LineOfHalf& half,
                        const MissingLine* like) {
    MissingLine missing;
    for (std::size_t i = 0; i < half.panels.size(); ++i) {
        const PanelOnLine& each = half.panels[i];
        missing.panels.push_back(missingOf(now.panels[each.panel], wanted.panels[each.panel], each,
                                           like ? &like->panels[i] : nullptr));
    }
    return missing;
}

ReshapeEdge reshapeThrough(const Pattern& now, const LineOfHalf& half, EdgeLine line,
                           const MissingLine& missing) {
    ReshapeEdge change{line, {}, {kShortFadeMm}, {kShortFadeMm}};
    for (std::size_t i = 0; i < half.panels.size(); ++i) {
        const PanelOnLine& each = half.panels[i];
        const MissingLine::OfPanel& panel = missing.panels[i];
        const double wholeMm = each.toMm - each.fromMm;
        // A corner is read once.
        for (std::size_t k = i == 0 ? 0 : 1; k < panel.shares.size(); ++k) {
            change.amounts.push_back(
                {{.panel = now.panels[each.panel].name, .alongMm = panel.shares[k] * wholeMm},
                 panel.upMm[k]});
        }
    }
    return change;
}

}  // namespace coutil
