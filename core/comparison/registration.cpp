#include "core/comparison/registration.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/tolerances.h"

namespace coutil::comparison {
namespace {

// x of the middle of the waist line; of the grain line where the panel does not reach the waist.
double middleMm(const Panel& panel) {
    const auto waist = crossingAtHeight(panel, 0);
    if (waist) return (waist->front.x() + waist->back.x()) / 2;
    return (panel.grain[0].x() + panel.grain[1].x()) / 2;
}

// Whether the same edge of both, as drawn, runs the same way over a stretch of some length: what an
// alteration has not reached lies where it was.
bool sharesStretch(const Panel& a, const Panel& b) {
    constexpr double kStepMm = 10;
    constexpr int kStretchSteps = 4;
    const Box boxA = boundsOf(outlineOf(a));
    const Box boxB = boundsOf(outlineOf(b));
    const double lowest = std::max(boxA.lowest.y(), boxB.lowest.y());
    const double highest = std::min(boxA.highest.y(), boxB.highest.y());
    int alikeInFront = 0;
    int alikeBehind = 0;
    const auto count = [](int before, double apartMm) {
        return std::abs(apartMm) <= tolerance::kSharedStretchMm ? before + 1 : 0;
    };
    for (double y = std::ceil(lowest / kStepMm) * kStepMm; y < highest; y += kStepMm) {
        const auto inA = crossingAtHeight(a, y);
        const auto inB = crossingAtHeight(b, y);
        if (!inA || !inB) continue;
        alikeInFront = count(alikeInFront, inB->front.x() - inA->front.x());
        alikeBehind = count(alikeBehind, inB->back.x() - inA->back.x());
        if (std::max(alikeInFront, alikeBehind) >= kStretchSteps) return true;
    }
    return false;
}

}  // namespace

Vector shiftOnto(const Panel& a, const Panel& b, Registration how) {
    if (how == Registration::ownFrame || a == b) return Vector::Zero();
    if (how == Registration::automatic && sharesStretch(a, b)) return Vector::Zero();
    return {middleMm(a) - middleMm(b), 0};
}

}  // namespace coutil::comparison
