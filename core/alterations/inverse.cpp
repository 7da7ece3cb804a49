// The alteration that takes another one back.
#include <algorithm>
#include <cmath>
#include <utility>

#include "core/alterations/alteration_kinds.h"
#include "core/alterations/apply_alterations.h"
#include "core/alterations/shape_parts.h"
#include "core/alterations/upward_edge.h"
#include "core/alterations/whole_pattern.h"

namespace coutil {
namespace {

constexpr double kStationsMm = 3;
// How far an edge may have moved at most; beyond, nothing is found.
constexpr int kFurtherLooks = 1;
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

std::vector<double> stationsOf(const Pattern& pattern, const std::vector<PartOfEdge>& parts) {
    const SeamLengths lengths = seamLengthsOf(edgeAt(pattern, parts.front().edge));
    const double wholeMm = lengths.aboveWaistMm + lengths.belowWaistMm;
    const int count = std::max(1, static_cast<int>(std::ceil(wholeMm / kStationsMm)));
    std::vector<double> stations;
    for (int k = 0; k <= count; ++k)
        stations.push_back(-lengths.belowWaistMm + wholeMm * k / count);
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
    const double stepMm = stations[1] - stations[0];
    shape.down.overMm = shape.up.overMm = kShortFadeMm;
    if (from == 0 && to > 0) {
        const double secant = (missing[1].mm - missing[0].mm) / stepMm;
        const double beyond = secantBeyond(secant, missing[0].slope);
        shape.amounts.insert(shape.amounts.begin(),
                             {stations[0] - stepMm, missing[0].mm - beyond * stepMm});
        shape.down.overMm.reset();
    }
    if (to == last && from < last) {
        const double secant = (missing[last].mm - missing[last - 1].mm) / stepMm;
        const double beyond = secantBeyond(secant, missing[last].slope);
        shape.amounts.push_back({stations[last] + stepMm, missing[last].mm + beyond * stepMm});
        shape.up.overMm.reset();
    }
    return shape;
}

std::optional<Change> takenBack(const Pattern& before, BodySide side, const ShapeSeam& shape) {
    Pattern after = before;
    if (!shapeSeam(after, side, shape).empty()) return std::nullopt;
    const std::vector<PartOfEdge> parts = partsOf(before, side, shape);
    const std::vector<double> stations = stationsOf(before, parts);
    std::vector<Missing> missing = missingBetween(after, before, parts, stations);
    // What is found along the normals of the altered edge is exact but for the ends, which are cut
    // again; further looks take that in.
    for (int look = 0; look < kFurtherLooks; ++look) {
        Pattern back = after;
        if (!shapeSeam(back, side, shapeThrough(shape, stations, missing)).empty())
            return std::nullopt;
        const std::vector<Missing> rest = missingBetween(back, before, parts, stations);
        for (std::size_t i = 0; i < missing.size(); ++i) {
            missing[i].mm += rest[i].mm;
            missing[i].slope += rest[i].slope;
        }
    }
    return shapeThrough(shape, stations, missing);
}

struct TakeBack {
    const Pattern& before;
    BodySide side = BodySide::both;

    std::optional<Change> operator()(const ShapeSeam& change) const {
        return takenBack(before, side, change);
    }
    template <class OtherChange>
    std::optional<Change> operator()(const OtherChange&) const {
        return std::nullopt;
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
