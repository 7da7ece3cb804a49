#include "core/alterations/cut_edge.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/tolerances.h"

namespace coutil {
namespace {

// Up to here an end simply runs on as its own last piece would; longer, it runs on straight.
constexpr double kSameCurveOnMm = 0.5;
constexpr double kSliverMm = 0.01;
// A short piece says too little of how its curve goes on.
constexpr double kRunOnShare = 0.1;

// A straight piece runs on as one piece.
bool isStraight(const Cubic& c) {
    const Cubic straight = straightCubic(c.p0, c.p3);
    return (c.p1 - straight.p1).norm() < tolerance::kTouchMm &&
           (c.p2 - straight.p2).norm() < tolerance::kTouchMm;
}

void runOn(Path& path, double byMm) {
    Cubic& last = path.pieces.back();
    const Vector onward = tangentAt(last, 1) * byMm;
    if (isStraight(last)) {
        last = straightCubic(last.p0, last.p3 + onward);
    } else if (byMm <= std::min(kSameCurveOnMm, kRunOnShare * lengthMm(last))) {
        double t = 1 + byMm / derivativeAt(last, 1).norm();
        // The curve's own length, not that of its tangent.
        const double wholeMm = lengthMm(last) + byMm;
        for (int step = 0; step < 3; ++step)
            t += (wholeMm - lengthMm(between(last, 0, t))) / derivativeAt(last, t).norm();
        const Point start = last.p0;
        last = between(last, 0, t);
        last.p0 = start;
    } else {
        path.pieces.push_back(straightCubic(last.p3, last.p3 + onward));
    }
}

// Ends a path at a length from its start that it reaches. A cut just behind a joint would leave a
// sliver without a direction: there the piece before runs on instead.
void cutAtLength(Path& path, double endMm) {
    path = between(path, {0, 0}, positionAtLength(path, endMm));
    const double lastMm = lengthMm(path.pieces.back());
    if (path.pieces.size() < 2 || lastMm >= kSliverMm) return;
    path.pieces.pop_back();
    if (lastMm > tolerance::kSettledLengthMm) runOn(path, lastMm);
}

// The path with its end at a length from its start.
void endAtLength(Path& path, double endMm) {
    const double wholeMm = lengthMm(path);
    if (std::abs(wholeMm - endMm) <= tolerance::kSettledLengthMm) return;
    if (wholeMm < endMm) {
        runOn(path, endMm - wholeMm);
    } else {
        cutAtLength(path, endMm);
    }
}

}  // namespace

std::optional<double> waistOnMm(const Path& upwards, const Point& near) {
    std::optional<PathPosition> best;
    double bestMm = 0;
    for (const PathPosition& place : crossingsAtHeight(upwards, 0)) {
        const double mm = (pointAt(upwards, place) - near).norm();
        if (best && mm >= bestMm) continue;
        best = place;
        bestMm = mm;
    }
    if (!best) return std::nullopt;
    return lengthToMm(upwards, *best);
}

UpwardEdge cutToLengths(const UpwardEdge& edge, const SeamLengths& wanted) {
    UpwardEdge cut = edge;
    endAtLength(cut.path, edge.waistAtMm + wanted.aboveWaistMm);
    if (std::abs(edge.waistAtMm - wanted.belowWaistMm) > tolerance::kSettledLengthMm) {
        Path downwards = reversed(cut.path);
        endAtLength(downwards, lengthMm(downwards) - edge.waistAtMm + wanted.belowWaistMm);
        cut.path = reversed(downwards);
        cut.waistAtMm = wanted.belowWaistMm;
    }
    return cut;
}

}  // namespace coutil
