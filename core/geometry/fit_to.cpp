#include <algorithm>
#include <cmath>
#include <span>

#include "core/geometry/cross_product.h"
#include "core/geometry/cubic_fit.h"
#include "core/geometry/path.h"
#include "core/geometry/tolerances.h"

namespace coutil {

namespace {

std::vector<Point> withoutRepeats(const std::vector<Point>& points) {
    std::vector<Point> kept;
    for (const Point& p : points) {
        if (kept.empty() || p != kept.back()) kept.push_back(p);
    }
    return kept;
}

double turnRadAt(const std::vector<Point>& points, std::size_t i) {
    const Vector in = points[i] - points[i - 1];
    const Vector out = points[i + 1] - points[i];
    return std::abs(std::atan2(crossProduct(in, out), in.dot(out)));
}

// The direction of the parabola through three neighbouring points, at the first, the middle or the
// last of them.
Vector parabolaDirection(const Point& a, const Point& b, const Point& c, int which) {
    const double before = (b - a).norm();
    const double after = (c - b).norm();
    const Vector slope0 = (b - a) / before;
    const Vector slope1 = (c - b) / after;
    const double share = which == 0   ? -before / (before + after)
                         : which == 1 ? before / (before + after)
                                      : 1 + after / (before + after);
    return (slope0 + share * (slope1 - slope0)).normalized();
}

// A direction in every point of a run without corners.
std::vector<Vector> directionsAlong(std::span<const Point> run) {
    const std::size_t last = run.size() - 1;
    if (last == 1) return std::vector<Vector>(2, (run[1] - run[0]).normalized());
    std::vector<Vector> directions{parabolaDirection(run[0], run[1], run[2], 0)};
    for (std::size_t i = 1; i < last; ++i) {
        directions.push_back(parabolaDirection(run[i - 1], run[i], run[i + 1], 1));
    }
    directions.push_back(parabolaDirection(run[last - 2], run[last - 1], run[last], 2));
    return directions;
}

// Fits the run piece by piece, each as long as the tolerance allows.
class RunFit {
  public:
    RunFit(std::span<const Point> run, double toleranceMm)
        : run_(run), directions_(directionsAlong(run)), toleranceMm_(toleranceMm) {}

    void appendTo(Path& path) const {
        const std::size_t last = run_.size() - 1;
        for (std::size_t i = 0; i < last;) {
            auto [piece, end] = longestFrom(i, last);
            path.pieces.push_back(piece);
            i = end;
        }
    }

  private:
    struct Reached {
        Cubic piece;
        std::size_t end = 0;
    };

    [[nodiscard]] std::optional<Cubic> fit(std::size_t from, std::size_t to) const {
        return cubicNear(run_.subspan(from, to - from + 1), directions_[from], directions_[to],
                         toleranceMm_);
    }

    // Doubles the reach while a fit is found, then halves the rest of the way.
    [[nodiscard]] Reached longestFrom(std::size_t from, std::size_t last) const {
        if (const auto whole = fit(from, last)) return {*whole, last};
        Reached best{straightCubic(run_[from], run_[from + 1]), from + 1};
        if (const auto shortest = fit(from, from + 1)) best.piece = *shortest;
        std::size_t failed = last;
        for (std::size_t reach = 2; from + reach < failed; reach *= 2) {
            if (const auto found = fit(from, from + reach)) {
                best = {*found, from + reach};
            } else {
                failed = from + reach;
            }
        }
        while (failed > best.end + 1) {
            const std::size_t middle = best.end + (failed - best.end) / 2;
            if (const auto found = fit(from, middle)) {
                best = {*found, middle};
            } else {
                failed = middle;
            }
        }
        return best;
    }

    std::span<const Point> run_;
    std::vector<Vector> directions_;
    double toleranceMm_;
};

}  // namespace

Path fittedTo(const std::vector<Point>& points, double toleranceMm, double cornerRad) {
    const std::vector<Point> chain = withoutRepeats(points);
    Path path;
    if (chain.size() < 2) return path;
    std::size_t start = 0;
    for (std::size_t i = 1; i < chain.size(); ++i) {
        const bool isEnd = i + 1 == chain.size();
        if (!isEnd && turnRadAt(chain, i) <= cornerRad) continue;
        RunFit(std::span(chain).subspan(start, i - start + 1), toleranceMm).appendTo(path);
        start = i;
    }
    return path;
}

}  // namespace coutil
