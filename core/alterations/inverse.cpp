// The alteration that takes another one back.
#include <algorithm>
#include <cmath>
#include <utility>

#include "core/alterations/alteration_kinds.h"
#include "core/alterations/apply_alterations.h"
#include "core/alterations/shape_parts.h"
#include "core/alterations/take_back.h"
#include "core/alterations/upward_edge.h"
#include "core/alterations/whole_pattern.h"

namespace coutil {
namespace {

constexpr double kStationsMm = 3;
constexpr double kEndStepMm = 0.75;
constexpr int kEndStations = 6;
// How far an edge may have moved at most; beyond, nothing is found.
constexpr int kLooks = 4;
constexpr double kReachMm = 250;
constexpr double kNothingMm = 1e-7;
constexpr double kShortFadeMm = 5;

// An edge run on straight at both ends, so that a ray finds it beyond them.
Path runOnBothWays(const Path& path, double byMm) {
    const Point first = path.start() - byMm * tangentAt(path.pieces.front(), 0);
    const Point last = path.end() + byMm * tangentAt(path.pieces.back(), 1);
    return joined(joined(straightPath(first, path.start()), path), straightPath(path.end(), last));
}

// How far into the panel an edge would have to move at a place to lie on its target, and how that
// grows along the edge.
struct Missing {
    double mm = 0;
    double slope = 0;
};

Missing missingAt(const UpwardEdge& edge, const Path& target, double positionMm) {
    const PathPosition place = positionAtLength(edge.path, edge.waistAtMm + positionMm);
    const Point from = pointAt(edge.path, place);
    const Vector up = tangentAt(edge.path, place);
    const Vector inward = inwardOf(up, edge.hasPanelOnLeft);
    const ClosestPlace nearest = closestOn(target, from);
    // An edge already there is found exactly.
    if (nearest.distanceMm < kNothingMm) return {};
    double bestMm = kReachMm;
    Vector along = up;
    for (const Meeting& meeting :
         meetingsOf(straightPath(from - kReachMm * inward, from + kReachMm * inward), target)) {
        const double mm = (meeting.point - from).dot(inward);
        if (std::abs(mm) >= std::abs(bestMm)) continue;
        bestMm = mm;
        along = tangentAt(target, meeting.onSecond);
    }
    if (bestMm == kReachMm) return {};
    // A bent edge gains or loses length as it moves.
    const double bend = curvaturePerMmAt(edge.path, place) * (edge.hasPanelOnLeft ? 1 : -1);
    return {bestMm, along.dot(inward) / along.dot(up) * (1 - bestMm * bend)};
}

// Even steps, closer at both ends: the direction there decides how the top and bottom lines run.
std::vector<double> stationsOf(const Pattern& pattern, const std::vector<PartOfEdge>& parts) {
    const SeamLengths lengths = seamLengthsOf(edgeAt(pattern, parts.front().edge));
    const double lowestMm = -lengths.belowWaistMm;
    const double wholeMm = lengths.aboveWaistMm + lengths.belowWaistMm;
    std::vector<double> stations;
    stations.reserve(2 * kEndStations);
    for (int k = 0; k < kEndStations; ++k) stations.push_back(lowestMm + k * kEndStepMm);
    const double innerMm = wholeMm - 2 * kEndStations * kEndStepMm;
    const int count = std::max(1, static_cast<int>(std::ceil(innerMm / kStationsMm)));
    for (int k = 0; k <= count; ++k)
        stations.push_back(lowestMm + kEndStations * kEndStepMm + innerMm * k / count);
    for (int k = kEndStations - 1; k >= 0; --k)
        stations.push_back(lengths.aboveWaistMm - k * kEndStepMm);
    return stations;
}

// What is missing at every station between `now` and `wanted`, by least squares over all edges.
std::vector<Missing> missingBetween(const Pattern& now, const Pattern& wanted,
                                    const std::vector<PartOfEdge>& parts,
                                    const std::vector<double>& stations) {
    std::vector<Missing> missing(stations.size());
    double squares = 0;
    for (const auto& [ref, part] : parts) {
        if (part == 0) continue;
        squares += part * part;
        const UpwardEdge edge = upwardOf(edgeAt(now, ref));
        const Path target = runOnBothWays(upwardOf(edgeAt(wanted, ref)).path, kReachMm / 4);
        for (std::size_t i = 0; i < stations.size(); ++i) {
            const Missing one = missingAt(edge, target, stations[i]);
            missing[i].mm += part * one.mm;
            missing[i].slope += part * one.slope;
        }
    }
    for (Missing& each : missing) {
        each.mm /= squares;
        each.slope /= squares;
    }
    return missing;
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

// Only the stretch that moves, faded at once outside it; where it reaches an end a reading past the
// end gives the edge its direction there.
ShapeSeam shapeThrough(const ShapeSeam& like, const std::vector<double>& stations,
                       const std::vector<Missing>& missing) {
    const auto moves = [](const Missing& each) { return std::abs(each.mm) > kNothingMm; };
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

// How far outlines would still be off: along the seam, and on the lines that end at it.
double badnessMm(const std::vector<Missing>& rest) {
    constexpr double kReachOfLineMm = 30;
    double mostMm = 0;
    for (const Missing& each : rest) mostMm = std::max(mostMm, std::abs(each.mm));
    return std::max({mostMm, kReachOfLineMm * std::abs(rest.front().slope),
                     kReachOfLineMm * std::abs(rest.back().slope)});
}

std::optional<Change> takenBack(const Pattern& before, BodySide side, const ShapeSeam& shape) {
    Pattern after = before;
    if (!shapeSeam(after, side, shape).empty()) return std::nullopt;
    const std::vector<PartOfEdge> parts = partsOf(before, side, shape);
    const std::vector<double> stations = stationsOf(before, parts);
    std::vector<Missing> missing = missingBetween(after, before, parts, stations);
    // What is found along the normals of the altered edge is exact but for the ends, which are cut
    // again, and for what a monotone curve can't follow; further looks take that in. The best of
    // all stands.
    std::optional<Change> best;
    double bestMm = 0;
    for (int look = 0; look < kLooks; ++look) {
        const ShapeSeam trial = shapeThrough(shape, stations, missing);
        Pattern back = after;
        if (!shapeSeam(back, side, trial).empty()) break;
        const std::vector<Missing> rest = missingBetween(back, before, parts, stations);
        if (const double mm = badnessMm(rest); !best || mm < bestMm) {
            best = trial;
            bestMm = mm;
        }
        for (std::size_t i = 0; i < missing.size(); ++i) {
            missing[i].mm += rest[i].mm;
            missing[i].slope += rest[i].slope;
        }
    }
    return best;
}

struct TakeBack {
    const Pattern& before;
    BodySide side = BodySide::both;

    std::optional<Change> operator()(const ShapeSeam& change) const {
        return takenBack(before, side, change);
    }
    template <class OtherChange>
    std::optional<Change> operator()(const OtherChange& change) const {
        if constexpr (requires { takenBack(before, side, change); }) {
            return takenBack(before, side, change);
        } else {
            return std::nullopt;
        }
    }
};

}  // namespace

std::optional<Alteration> inverseOf(const Alteration& alteration, const Pattern& before) {
    const Pattern whole = alteration.side == BodySide::both ? before : wholeOf(before);
    auto change = std::visit(TakeBack{whole, alteration.side}, alteration.change);
    if (!change) return std::nullopt;
    Alteration inverse = alteration;
    inverse.id.clear();
    inverse.marks.clear();
    inverse.why.clear();
    inverse.change = *std::move(change);
    return inverse;
}

}  // namespace coutil
