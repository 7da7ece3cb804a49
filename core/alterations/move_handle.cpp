// Moving a handle of a curve by hand.
#include <cmath>
#include <numbers>

#include "core/alterations/alteration_kinds.h"
#include "core/alterations/change_problem.h"
#include "core/alterations/draw_lines.h"
#include "core/alterations/find_places.h"
#include "core/alterations/settle.h"
#include "core/geometry/tolerances.h"

namespace coutil {
namespace {

constexpr const char* kKind = "move_handle";
constexpr double kMostMm = 150;

bool isSmoothJoint(const Cubic& before, const Cubic& after) {
    constexpr double kRad = tolerance::kSmoothAcrossSeamDeg * std::numbers::pi / 180;
    return tangentAt(before, 1).dot(tangentAt(after, 0)) > std::cos(kRad);
}

// Moves the handle; the one on the other side of its joint turns along, keeping its length.
void moveHandleOf(Path& path, std::size_t piece, int handle, const Vector& byMm) {
    std::vector<Cubic>& pieces = path.pieces;
    if (handle == 1) {
        const bool hasJoint = piece > 0 && isSmoothJoint(pieces[piece - 1], pieces[piece]);
        pieces[piece].p1 += byMm;
        if (!hasJoint) return;
        Cubic& before = pieces[piece - 1];
        before.p2 = before.p3 - tangentAt(pieces[piece], 0) * (before.p3 - before.p2).norm();
    } else {
        const bool hasJoint =
            piece + 1 < pieces.size() && isSmoothJoint(pieces[piece], pieces[piece + 1]);
        pieces[piece].p2 += byMm;
        if (!hasJoint) return;
        Cubic& after = pieces[piece + 1];
        after.p1 = after.p0 + tangentAt(pieces[piece], 1) * (after.p1 - after.p0).norm();
    }
}

}  // namespace

Problems moveHandle(Pattern& pattern, BodySide side, const MoveHandle& change) {
    const std::string what = change.panel + ", " + change.edge;
    if (!isSoundMm(change.byMm.x()) || !isSoundMm(change.byMm.y()) || change.piece < 0 ||
        (change.handle != 1 && change.handle != 2))
        return badValue(kKind, what);
    if (change.byMm.norm() > kMostMm) return tooLarge(kKind, what, change.byMm.norm(), kMostMm);
    const auto panels = panelsNamed(pattern, change.panel, side);
    if (panels.empty()) return unfit(kKind, change.panel);
    Pattern changed = pattern;
    const auto piece = static_cast<std::size_t>(change.piece);
    for (const std::size_t p : panels) {
        const auto e = edgeNamed(pattern.panels[p], change.edge);
        if (!e || piece >= pattern.panels[p].edges[*e].path.pieces.size())
            return unfit(kKind, what);
        moveHandleOf(changed.panels[p].edges[*e].path, piece, change.handle, change.byMm);
    }
    settle(pattern, changed);
    evenLinesAcrossSeams(changed);
    pattern = std::move(changed);
    return {};
}

}  // namespace coutil
