#include "core/comparison/exaggerated_outline.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/measured_chain.h"
#include "core/geometry/tolerances.h"

namespace coutil {
namespace {

constexpr double kChordMm = 2;
// Ten times the difference of two chains is still within 0.1 mm.
constexpr double kFlatnessMm = tolerance::kCutFlatnessMm / 2;

// Two stretches that belong together, from one end of each to the other.
struct Stretch {
    double fromAMm = 0;
    double toAMm = 0;
    double fromBMm = 0;
    double toBMm = 0;
};

std::vector<Stretch> stretchesOf(const Edge& a, const MeasuredChain& chainA, const Edge& b,
                                 const MeasuredChain& chainB) {
    const auto isInside = [](const std::optional<double>& mark, const MeasuredChain& chain) {
        return mark && *mark > 0 && *mark < chain.lengthMm();
    };
    const double endA = chainA.lengthMm();
    const double endB = chainB.lengthMm();
    if (!isInside(a.waistMarkAtMm, chainA) || !isInside(b.waistMarkAtMm, chainB))
        return {{0, endA, 0, endB}};
    return {{0, *a.waistMarkAtMm, 0, *b.waistMarkAtMm},
            {*a.waistMarkAtMm, endA, *b.waistMarkAtMm, endB}};
}

// All but the last point, which the next edge brings.
void appendEdge(const Edge& a, const Edge& b, const Vector& shiftOfB, double factor,
                std::vector<Point>& points) {
    const MeasuredChain chainA(a.path, kFlatnessMm);
    const MeasuredChain chainB(b.path, kFlatnessMm);
    for (const Stretch& stretch : stretchesOf(a, chainA, b, chainB)) {
        const double longestMm =
            std::max(stretch.toAMm - stretch.fromAMm, stretch.toBMm - stretch.fromBMm);
        const int count = std::max(1, static_cast<int>(std::ceil(longestMm / kChordMm)));
        for (int i = 0; i < count; ++i) {
            const double share = static_cast<double>(i) / count;
            const Point inA =
                chainA.at(stretch.fromAMm + share * (stretch.toAMm - stretch.fromAMm));
            const Point inB =
                chainB.at(stretch.fromBMm + share * (stretch.toBMm - stretch.fromBMm)) + shiftOfB;
            points.push_back(inA + factor * (inB - inA));
        }
    }
}

}  // namespace

Path exaggeratedOutline(const Panel& a, const Panel& b, const Vector& shiftOfB, double factor) {
    if (a.edges.size() != b.edges.size()) return {};
    std::vector<Point> points;
    for (std::size_t i = 0; i < a.edges.size(); ++i) {
        if (a.edges[i].path.isEmpty() || b.edges[i].path.isEmpty()) return {};
        if (a.edges[i].role != b.edges[i].role) return {};
        appendEdge(a.edges[i], b.edges[i], shiftOfB, factor, points);
    }
    if (points.empty()) return {};
    points.push_back(points.front());
    return polylinePath(points);
}

Path exaggeratedOutline(const Pattern& a, const Pattern& b, const PanelComparison& pair,
                        double factor) {
    if (!pair.inA || !pair.inB) return {};
    return exaggeratedOutline(a.panels[*pair.inA], b.panels[*pair.inB], pair.shiftOfB, factor);
}

}  // namespace coutil
