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
constexpr double kReachMm = 250;
constexpr double kNothingMm = 1e-7;
constexpr double kShortFadeMm = 5;
// Stations run on past both ends, so that the direction in which an edge ends is met as well.
constexpr double kPastEndMm = 24;

// An edge run on straight at both ends, so that a ray finds it beyond them.
Path runOnBothWays(const Path& path, double byMm) {
    const Point first = path.start() - byMm * tangentAt(path.pieces.front(), 0);
    const Point last = path.end() + byMm * tangentAt(path.pieces.back(), 1);
    return joined(joined(straightPath(first, path.start()), path), straightPath(path.end(), last));
}

// How far into the panel an edge would have to move at a seam position to lie on `target`.
double missingMm(const UpwardEdge& edge, const Path& target, double positionMm) {
    const PathPosition place = positionAtLength(edge.path, edge.waistAtMm + positionMm);
    const Point from = pointAt(edge.path, place);
    const Vector inward = inwardOf(tangentAt(edge.path, place), edge.hasPanelOnLeft);
    // A ray through `from` itself: an edge already there is found exactly.
    if (closestOn(target, from).distanceMm < kNothingMm) return 0;
    double best = kReachMm;
    for (const Meeting& meeting :
         meetingsOf(straightPath(from - kReachMm * inward, from + kReachMm * inward), target)) {
        const double mm = (meeting.point - from).dot(inward);
        if (std::abs(mm) < std::abs(best)) best = mm;
    }
    return best == kReachMm ? 0 : best;
}

UpwardEdge runOnBothWays(const UpwardEdge& edge, double byMm) {
    return {runOnBothWays(edge.path, byMm), edge.waistAtMm + byMm, edge.hasPanelOnLeft};
}

std::vector<double> stationsOf(const Pattern& pattern, const std::vector<PartOfEdge>& parts) {
    const SeamLengths lengths = seamLengthsOf(edgeAt(pattern, parts.front().edge));
    const double wholeMm = lengths.aboveWaistMm + lengths.belowWaistMm + 2 * kPastEndMm;
    const int count = std::max(1, static_cast<int>(std::ceil(wholeMm / kStationsMm)));
    std::vector<double> stations;
    for (int k = 0; k <= count; ++k)
        stations.push_back(-lengths.belowWaistMm - kPastEndMm + wholeMm * k / count);
    return stations;
}

// What is missing at every station between `now` and `wanted`, by least squares over all edges.
std::vector<AmountAt> missingAmounts(const Pattern& now, const Pattern& wanted,
                                     const std::vector<PartOfEdge>& parts,
                                     const std::vector<double>& stations) {
    std::vector<AmountAt> amounts;
    for (const double station : stations) amounts.push_back({station, 0});
    double squares = 0;
    for (const auto& [ref, part] : parts) {
        if (part == 0) continue;
        squares += part * part;
        const UpwardEdge edge = runOnBothWays(upwardOf(edgeAt(now, ref)), 2 * kPastEndMm);
        const Path target = runOnBothWays(upwardOf(edgeAt(wanted, ref)).path, kReachMm / 4);
        for (AmountAt& amount : amounts)
            amount.amountMm += part * missingMm(edge, target, amount.positionMm);
    }
    for (AmountAt& amount : amounts) amount.amountMm /= squares;
    return amounts;
}

// Only the stretch that moves, faded at once outside it; carried on where it reaches an end.
ShapeSeam trimmedShape(const ShapeSeam& like, const std::vector<AmountAt>& amounts) {
    const auto moves = [](const AmountAt& amount) {
        return std::abs(amount.amountMm) > kNothingMm;
    };
    ShapeSeam shape{.seam = like.seam, .amounts = {}, .frontPart = like.frontPart};
    const auto first = std::ranges::find_if(amounts, moves);
    if (first == amounts.end()) {
        shape.amounts = {{amounts.front().positionMm, 0}};
        return shape;
    }
    const auto last = std::find_if(amounts.rbegin(), amounts.rend(), moves).base();
    const auto from = first == amounts.begin() ? first : first - 1;
    const auto to = last == amounts.end() ? last : last + 1;
    shape.amounts.assign(from, to);
    shape.down.overMm = first == amounts.begin() ? std::nullopt : std::optional(kShortFadeMm);
    shape.up.overMm = last == amounts.end() ? std::nullopt : std::optional(kShortFadeMm);
    return shape;
}

std::optional<Change> takenBack(const Pattern& before, BodySide side, const ShapeSeam& shape) {
    Pattern after = before;
    if (!shapeSeam(after, side, shape).empty()) return std::nullopt;
    const std::vector<PartOfEdge> parts = partsOf(before, side, shape);
    const std::vector<double> stations = stationsOf(before, parts);
    std::vector<AmountAt> amounts = missingAmounts(after, before, parts, stations);
    // What is found along the normals of the altered edge is exact but for the change of length
    // below; a second look takes that in.
    Pattern back = after;
    if (!shapeSeam(back, side, trimmedShape(shape, amounts)).empty()) return std::nullopt;
    const std::vector<AmountAt> rest = missingAmounts(back, before, parts, stations);
    for (std::size_t i = 0; i < amounts.size(); ++i) amounts[i].amountMm += rest[i].amountMm;
    return trimmedShape(shape, amounts);
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
