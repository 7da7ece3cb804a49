#include "core/revision/ink_room.h"

#include <optional>
#include <tuple>
#include <utility>

#include "core/geometry/tolerances.h"

namespace coutil {
namespace {

using TwoPieces = std::pair<Cubic, Cubic>;

double chordMm(const Cubic& piece) { return (piece.p3 - piece.p0).norm(); }

// The last part of a piece run on as far as `tiny`, which follows it, and ending in its direction.
Cubic runOn(const Cubic& rest, const Cubic& tiny) {
    const double speed = derivativeAt(rest, 1).norm();
    Cubic run = splitAt(rest, 1 + chordMm(tiny) / speed).first;
    const double handleMm = (run.p3 - run.p2).norm();
    run.p3 = tiny.p3;
    run.p2 = tiny.p3 - handleMm * tangentAt(tiny, 1);
    return run;
}

bool isSameCurve(const Cubic& run, const Cubic& rest, const Cubic& tiny) {
    const Path path{{run}};
    for (const Point& point : {pointAt(rest, 0.5), rest.p3, pointAt(tiny, 0.5)})
        if (closestOn(path, point).distanceMm > tolerance::kSamePointMm) return false;
    return true;
}

// Both pieces again, the joint moved back until the second is kLongForInkMm long. Nothing where the
// first has not so much to give or does not go smoothly on.
std::optional<TwoPieces> jointMovedBack(const Cubic& first, const Cubic& tiny) {
    const double firstMm = lengthMm(first);
    const double takenMm = tolerance::kLongForInkMm - chordMm(tiny);
    if (firstMm < takenMm + tolerance::kShortForInkMm) return std::nullopt;
    const Vector before = tangentAt(first, 1);
    const Vector after = tangentAt(tiny, 0);
    if (before.dot(after) < tolerance::kStraightOnCosine) return std::nullopt;
    const PathPosition joint = positionAtLength(Path{{first}}, firstMm - takenMm);
    const auto [kept, rest] = splitAt(first, joint.t);
    const Cubic run = runOn(rest, tiny);
    if (!isSameCurve(run, rest, tiny)) return std::nullopt;
    return TwoPieces{kept, run};
}

bool isShort(const Cubic& piece) { return chordMm(piece) < tolerance::kShortForInkMm; }

}  // namespace

Path withRoomForInk(const Path& path) {
    Path roomy = path;
    std::vector<Cubic>& pieces = roomy.pieces;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        if (!isShort(pieces[i])) continue;
        if (i > 0 && !isShort(pieces[i - 1])) {
            if (const auto moved = jointMovedBack(pieces[i - 1], pieces[i]))
                std::tie(pieces[i - 1], pieces[i]) = *moved;
        } else if (i + 1 < pieces.size()) {
            if (const auto moved = jointMovedBack(reversed(pieces[i + 1]), reversed(pieces[i]))) {
                pieces[i + 1] = reversed(moved->first);
                pieces[i] = reversed(moved->second);
            }
        }
    }
    return roomy;
}

}  // namespace coutil
