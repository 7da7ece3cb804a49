#include "core/geometry/offset_outline.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "core/geometry/cross_product.h"
#include "core/geometry/offset_chain.h"
#include "core/geometry/offset_check.h"
#include "core/geometry/offset_corner.h"
#include "core/geometry/offset_loop.h"
#include "core/geometry/tolerances.h"
#include "core/geometry/winding_cleanup.h"

namespace coutil {

namespace {

// Below this a turn of a chain of points is part of a curve: chords of kOffsetChordMm turn by less
// on any radius above 0.8 mm.
constexpr double kCornerTurnRad = 0.2;

Problem errorAt(ProblemCode code, const std::optional<Point>& at) {
    return {code, Severity::error, {}, {}, {}, at, {}};
}

bool isFinite(const Cubic& c) {
    return c.p0.allFinite() && c.p1.allFinite() && c.p2.allFinite() && c.p3.allFinite();
}

// What keeps the edges from being offset at all.
std::optional<Problem> faultOfEdges(const std::vector<OffsetEdge>& edges) {
    if (edges.empty()) return errorAt(ProblemCode::outlineOpen, {});
    for (const OffsetEdge& edge : edges) {
        const auto& pieces = edge.path.pieces;
        if (pieces.empty() || !std::all_of(pieces.begin(), pieces.end(), isFinite)) {
            return errorAt(ProblemCode::outlineOpen, {});
        }
        if (std::isfinite(edge.widthMm) && edge.widthMm >= 0) continue;
        Problem bad = errorAt(ProblemCode::styleValueOutOfRange, edge.path.start());
        bad.figures = {{"value", edge.widthMm, FigureUnit::millimetre},
                       {"lowest", 0, FigureUnit::millimetre}};
        return bad;
    }
    return std::nullopt;
}

double doubleAreaMm2(const std::vector<OffsetChain>& chains) {
    double sum = 0;
    for (const OffsetChain& chain : chains) {
        for (std::size_t k = 1; k < chain.feet.size(); ++k) {
            sum += crossProduct(chain.feet[k - 1], chain.feet[k]);
        }
    }
    return sum;
}

// Closed, every edge with a length, counter-clockwise.
std::optional<Problem> faultOfChains(const std::vector<OffsetEdge>& edges,
                                     const std::vector<OffsetChain>& chains) {
    std::size_t edgesSeen = 0;
    for (std::size_t k = 0; k < chains.size(); ++k) {
        edgesSeen += k == 0 || chains[k].edge != chains[k - 1].edge;
        const OffsetChain& next = chains[(k + 1) % chains.size()];
        const Point& end = chains[k].feet.back();
        const double gapMm = (next.feet.front() - end).norm();
        if (gapMm > tolerance::kSamePointMm) return errorAt(ProblemCode::outlineOpen, end);
    }
    if (edgesSeen != edges.size()) {
        return errorAt(ProblemCode::outlineOpen, edges.front().path.start());
    }
    if (doubleAreaMm2(chains) > tolerance::kSliverMm2) return std::nullopt;
    return errorAt(ProblemCode::outlineCrossesItself, edges.front().path.start());
}

InkRing sewingRingOf(const std::vector<OffsetChain>& chains) {
    InkRing ring;
    for (const OffsetChain& chain : chains) {
        for (const Point& foot : chain.feet) {
            const InkPoint ink = onInkGrid(foot);
            if (ring.empty() || ring.back() != ink) ring.push_back(ink);
        }
    }
    if (ring.size() > 1 && ring.front() == ring.back()) ring.pop_back();
    return ring;
}

double turnRad(const Point& a, const Point& b, const Point& c) {
    const Vector before = b - a;
    const Vector after = c - b;
    return std::abs(std::atan2(before.x() * after.y() - before.y() * after.x(), before.dot(after)));
}

// Begins at the sharpest corner so that the closed path's own start is no seam in a curve.
Path pathThrough(std::vector<Point> ring) {
    std::size_t sharpest = 0;
    double turn = -1;
    for (std::size_t k = 0; k < ring.size(); ++k) {
        const double here = turnRad(ring[(k + ring.size() - 1) % ring.size()], ring[k],
                                    ring[(k + 1) % ring.size()]);
        if (here > turn + tolerance::kSmoothTurn) {
            turn = here;
            sharpest = k;
        }
    }
    std::rotate(ring.begin(), ring.begin() + static_cast<std::ptrdiff_t>(sharpest), ring.end());
    ring.push_back(ring.front());
    return fittedTo(ring, tolerance::kOffsetFitMm, kCornerTurnRad);
}

Problem lostPart(const LeftOutPart& part) {
    Problem problem{ProblemCode::offsetLostPart, Severity::warning, {}, {}, {}, part.at, {}};
    problem.figures = {{"value", part.sizeMm, FigureUnit::millimetre}};
    return problem;
}

}  // namespace

Outcome<OffsetOutline> offsetOutline(const std::vector<OffsetEdge>& edges,
                                     const std::vector<CornerTreatment>& corners) {
    if (const auto fault = faultOfEdges(edges)) return *fault;
    const std::vector<OffsetChain> chains = offsetChains(edges);
    if (const auto fault = faultOfChains(edges, chains)) return *fault;
    const std::vector<CornerJoin> joins = joinsOf(chains, corners);
    const CleanedLoop cleaned = positiveRegion(rawLoopOf(chains, joins));
    const Point start = edges.front().path.start();
    if (cleaned.outer.empty()) return errorAt(ProblemCode::outlineCrossesItself, start);

    OffsetOutline outline;
    for (const InkPoint& p : cleaned.outer) outline.points.push_back(inMillimetres(p));
    std::vector<CornerZone> zones;
    for (std::size_t k = 0; k < joins.size(); ++k) {
        const Point& at = chains[k].feet.back();
        zones.push_back({at, joins[k].reachMm, joins[k].sharedMm});
        const bool isBetweenEdges = k + 1 == chains.size() || chains[k + 1].edge != chains[k].edge;
        if (isBetweenEdges) outline.corners.push_back({at, joins[k].treatment, joins[k].reachMm});
    }
    std::vector<Problem> problems = checkOffset(chains, zones, outline.points);
    for (const LeftOutPart& part : cleaned.leftOut) problems.push_back(lostPart(part));
    if (std::any_of(problems.begin(), problems.end(), isError)) {
        if (!isSimple(sewingRingOf(chains))) {
            return errorAt(ProblemCode::outlineCrossesItself, start);
        }
        return Outcome<OffsetOutline>::failed(std::move(problems));
    }
    outline.path = cleaned.wasClean ? pathAlong(chains, joins) : pathThrough(outline.points);
    return {std::move(outline), std::move(problems)};
}

}  // namespace coutil
