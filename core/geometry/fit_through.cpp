#include "core/geometry/path.h"
#include "core/geometry/tolerances.h"

// The classical cubic spline by chord length: in every inner point the second derivatives of both
// sides are made equal, which gives one equation in three neighbouring first derivatives. A free
// end makes its piece a parabola.
namespace coutil {

namespace {

// before * D[i-1] + own * D[i] + after * D[i+1] = right
struct Equation {
    double before = 0;
    double own = 1;
    double after = 0;
    Vector right = Vector::Zero();
};

std::vector<Point> withoutRepeats(const std::vector<Point>& points) {
    std::vector<Point> kept;
    for (const Point& p : points) {
        if (kept.empty() || (p - kept.back()).norm() > tolerance::kSamePointMm) kept.push_back(p);
    }
    return kept;
}

Equation endEquation(const Vector& direction, const Vector& slope, bool isFirst) {
    Equation e;
    if (direction.isZero(0)) {
        (isFirst ? e.after : e.before) = 1;
        e.right = 2 * slope;
    } else {
        e.right = direction;
    }
    return e;
}

// Elimination from the front; the system has a dominant diagonal, no pivots are needed.
std::vector<Vector> solved(std::vector<Equation> equations) {
    for (std::size_t i = 1; i < equations.size(); ++i) {
        const Equation& above = equations[i - 1];
        Equation& e = equations[i];
        const double factor = e.before / above.own;
        e.own -= factor * above.after;
        e.right -= factor * above.right;
    }
    std::vector<Vector> unknowns(equations.size());
    for (std::size_t i = equations.size(); i-- > 0;) {
        const Equation& e = equations[i];
        unknowns[i] = e.right / e.own;
        if (i + 1 < equations.size()) unknowns[i] -= e.after / e.own * unknowns[i + 1];
    }
    return unknowns;
}

std::vector<Vector> derivativesAt(const std::vector<Point>& points, const Vector& startDirection,
                                  const Vector& endDirection) {
    const std::size_t last = points.size() - 1;
    std::vector<double> chordMm(last);
    std::vector<Vector> slope(last);
    for (std::size_t i = 0; i < last; ++i) {
        chordMm[i] = (points[i + 1] - points[i]).norm();
        slope[i] = (points[i + 1] - points[i]) / chordMm[i];
    }
    std::vector<Equation> equations;
    equations.push_back(endEquation(startDirection, slope.front(), true));
    for (std::size_t i = 1; i < last; ++i) {
        const double before = 1 / chordMm[i - 1];
        const double after = 1 / chordMm[i];
        equations.push_back(
            {before, 2 * (before + after), after, 3 * (before * slope[i - 1] + after * slope[i])});
    }
    equations.push_back(endEquation(endDirection, slope.back(), false));
    return solved(std::move(equations));
}

}  // namespace

Path fittedThrough(const std::vector<Point>& points, const Vector& startDirection,
                   const Vector& endDirection) {
    const std::vector<Point> through = withoutRepeats(points);
    if (through.empty()) return {};
    const bool areEndsFree = startDirection.isZero(0) && endDirection.isZero(0);
    if (through.size() == 1 || (through.size() == 2 && areEndsFree)) {
        return straightPath(through.front(), through.back());
    }
    const auto derivatives = derivativesAt(through, startDirection, endDirection);
    Path path;
    for (std::size_t i = 0; i + 1 < through.size(); ++i) {
        const double thirdMm = (through[i + 1] - through[i]).norm() / 3;
        path.pieces.push_back({through[i], through[i] + thirdMm * derivatives[i],
                               through[i + 1] - thirdMm * derivatives[i + 1], through[i + 1]});
    }
    return path;
}

}  // namespace coutil
