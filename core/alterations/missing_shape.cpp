#include "core/alterations/missing_shape.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "core/alterations/upward_edge.h"

namespace coutil {
namespace {

constexpr double kEndStepMm = 0.75;
constexpr int kEndStations = 6;
// How far an edge may have moved at most; beyond, nothing is found.
constexpr double kReachMm = 250;
constexpr double kNothingMm = 1e-7;
constexpr double kShortFadeMm = 5;

// An edge run on straight at both ends, so that a ray finds it beyond them.
Path runOnBothWays(const Path& path, double byMm) {
    const Point first = path.start() - byMm * tangentAt(path.pieces.front(), 0);
    const Point last = path.end() + byMm * tangentAt(path.pieces.back(), 1);
    return joined(joined(straightPath(first, path.start()), path), straightPath(path.end(), last));
}

// A normal of an edge, and how the edge bends there.
struct Ray {
    Point from = Point::Zero();
    Vector up = Vector::Zero();
    Vector inward = Vector::Zero();
    double bend = 0;
};

Ray rayAt(const UpwardEdge& edge, double positionMm) {
    const PathPosition place = positionAtLength(edge.path, edge.waistAtMm + positionMm);
    const Vector up = tangentAt(edge.path, place);
    return {pointAt(edge.path, place), up, inwardOf(up, edge.hasPanelOnLeft),
            curvaturePerMmAt(edge.path, place) * (edge.hasPanelOnLeft ? 1 : -1)};
}

// How far along a ray a path lies, where it does so nearest to `nearMm`.
std::optional<MissingShape> alongRay(const Ray& ray, const Path& path, double nearMm) {
    std::optional<MissingShape> best;
    const Path line =
        straightPath(ray.from - kReachMm * ray.inward, ray.from + kReachMm * ray.inward);
    for (const Meeting& meeting : meetingsOf(line, path)) {
        const double mm = (meeting.point - ray.from).dot(ray.inward);
        if (best && std::abs(mm - nearMm) >= std::abs(best->mm - nearMm)) continue;
        const Vector along = tangentAt(path, meeting.onSecond);
        // A bent edge gains or loses length as it moves.
        best = {mm, along.dot(ray.inward) / along.dot(ray.up) * (1 - mm * ray.bend)};
    }
    return best;
}

MissingShape missingAt(const Ray& ray, const Path& now, const Path& wanted, double nearMm) {
    const auto is = alongRay(ray, now, nearMm);
    if (!is) return {};
    const auto shouldBe = alongRay(ray, wanted, is->mm);
    if (!shouldBe || std::abs(shouldBe->mm - is->mm) < kNothingMm) return {};
    return {shouldBe->mm - is->mm, shouldBe->slope - is->slope};
}

// The secant beyond an end with which the amount curve leaves its end knot at `slope`, given the
// secant before it: the harmonic mean of both is the slope (monotone_line.h, equal steps).
double secantBeyond(double secant, double slope) {
    constexpr double kMost = 20;
    if (secant * slope <= 0) return 0;
    const double left = 2 * secant - slope;
    if (left * secant <= 0) return kMost * slope;
    return std::min(secant / left, kMost) * slope;
}

}  // namespace

std::vector<double> shapeStations(const Pattern& pattern, const std::vector<PartOfEdge>& parts,
                                  double stepMm) {
    const SeamLengths lengths = seamLengthsOf(edgeAt(pattern, parts.front().edge));
    const double lowestMm = -lengths.belowWaistMm;
    const double wholeMm = lengths.aboveWaistMm + lengths.belowWaistMm;
    std::vector<double> stations;
    stations.reserve(2 * kEndStations);
    for (int k = 0; k < kEndStations; ++k) stations.push_back(lowestMm + k * kEndStepMm);
    const double innerMm = wholeMm - 2 * kEndStations * kEndStepMm;
    const int count = std::max(1, static_cast<int>(std::ceil(innerMm / stepMm)));
    for (int k = 0; k <= count; ++k)
        stations.push_back(lowestMm + kEndStations * kEndStepMm + innerMm * k / count);
    for (int k = kEndStations - 1; k >= 0; --k)
        stations.push_back(lengths.aboveWaistMm - k * kEndStepMm);
    return stations;
}

std::vector<MissingShape> missingShapes(const Pattern& base, const Pattern& now,
                                        const Pattern& wanted, const std::vector<PartOfEdge>& parts,
                                        const std::vector<double>& stations,
                                        const std::vector<MissingShape>& soFar) {
    std::vector<MissingShape> missing(stations.size());
    double squares = 0;
    for (const auto& [ref, part] : parts) {
        if (part == 0) continue;
        squares += part * part;
        const UpwardEdge edge = upwardOf(edgeAt(base, ref));
        const Path moved = runOnBothWays(upwardOf(edgeAt(now, ref)).path, kReachMm / 4);
        const Path target = runOnBothWays(upwardOf(edgeAt(wanted, ref)).path, kReachMm / 4);
        for (std::size_t i = 0; i < stations.size(); ++i) {
            const MissingShape one =
                missingAt(rayAt(edge, stations[i]), moved, target, part * soFar[i].mm);
            missing[i].mm += part * one.mm;
            missing[i].slope += part * one.slope;
        }
    }
    for (MissingShape& each : missing) {
        each.mm /= squares;
        each.slope /= squares;
    }
    return missing;
}

void smooth(std::vector<MissingShape>& missing) {
    const std::vector<MissingShape> rough = missing;
    for (std::size_t i = 1; i + 1 < rough.size(); ++i)
        missing[i].mm = (rough[i - 1].mm + 2 * rough[i].mm + rough[i + 1].mm) / 4;
}

double worstMm(const std::vector<MissingShape>& missing) {
    constexpr double kReachOfLineMm = 30;
    double mostMm = 0;
    for (const MissingShape& each : missing) mostMm = std::max(mostMm, std::abs(each.mm));
    return std::max({mostMm, kReachOfLineMm * std::abs(missing.front().slope),
                     kReachOfLineMm * std::abs(missing.back().slope)});
}

ShapeSeam shapeThrough(const ShapeSeam& like, const std::vector<double>& stations,
                       const std::vector<MissingShape>& missing) {
    const auto moves = [](const MissingShape& each) { return std::abs(each.mm) > kNothingMm; };
    ShapeSeam shape{.seam = like.seam, .amounts = {}, .frontPart = like.frontPart};
    const auto last = missing.size() - 1;
    std::size_t from = 0;
    std::size_t to = last;
    while (from < last && !moves(missing[from])) ++from;
    while (to > from && !moves(missing[to])) --to;
    if (from > 0) --from;
    if (to < last) ++to;
    for (std::size_t i = from; i <= to; ++i) shape.amounts.push_back({stations[i], missing[i].mm});
    shape.down.overMm = shape.up.overMm = kShortFadeMm;
    if (from == 0 && to > 0) {
        const double secant = (missing[1].mm - missing[0].mm) / kEndStepMm;
        const double beyond = secantBeyond(secant, missing[0].slope);
        shape.amounts.insert(shape.amounts.begin(),
                             {stations[0] - kEndStepMm, missing[0].mm - beyond * kEndStepMm});
        shape.down.overMm.reset();
    }
    if (to == last && from < last) {
        const double secant = (missing[last].mm - missing[last - 1].mm) / kEndStepMm;
        const double beyond = secantBeyond(secant, missing[last].slope);
        shape.amounts.push_back(
            {stations[last] + kEndStepMm, missing[last].mm + beyond * kEndStepMm});
        shape.up.overMm.reset();
    }
    return shape;
}

}  // namespace coutil
