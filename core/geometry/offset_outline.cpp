#include "core/geometry/offset_outline.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "core/geometry/cross_product.h"
#include "core/geometry/offset_chain.h"
#include "core/geometry/offset_check.h"
#include "core/geometry/offset_corner.h"
#include "core/geometry/tolerances.h"
#include "core/geometry/winding_cleanup.h"

namespace coutil {

namespace {

// Below this a turn of a chain of points is part of a curve: chords of kOffsetChordMm turn by less
// on any radius above 0.8 mm.
constexpr double kCornerTurnRad = 0.2;

Problem errorAt(ProblemCode code, std::optional<Point> at) {
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

// Whether the cuts of the corners at both ends of a chain pass each other.
bool leavesNothing(const OffsetChain& chain, const CornerJoin& before, const CornerJoin& after) {
    if (before.secondFrom != after.firstKeeps) return before.secondFrom > after.firstKeeps;
    const std::size_t k = before.secondFrom;
    const Vector step = chain.points[k] - chain.points[k - 1];
    return step.dot(after.through.front() - before.through.back()) <= 0;
}

std::vector<CornerJoin> joinsOf(const std::vector<OffsetChain>& chains,
                                const std::vector<CornerTreatment>& corners) {
    const std::size_t n = chains.size();
    std::vector<CornerJoin> joins;
    for (std::size_t k = 0; k < n; ++k) {
        const OffsetChain& next = chains[(k + 1) % n];
        const bool isBetweenEdges = k + 1 == n || next.edge != chains[k].edge;
        const auto asked =
            isBetweenEdges && !corners.empty() ? corners[chains[k].edge] : CornerTreatment::mitred;
        joins.push_back(joinAtCorner(chains[k], next, asked));
    }
    std::vector<bool> isCutAway(n);
    for (std::size_t k = 0; k < n; ++k) {
        isCutAway[k] = leavesNothing(chains[k], joins[(k + n - 1) % n], joins[k]);
    }
    for (std::size_t k = 0; k < n; ++k) {
        const std::size_t next = (k + 1) % n;
        if (isCutAway[k] || isCutAway[next]) joins[k] = joinWithoutCuts(chains[k], chains[next]);
    }
    return joins;
}

std::vector<Point> rawLoopOf(const std::vector<OffsetChain>& chains,
                             const std::vector<CornerJoin>& joins) {
    std::vector<Point> loop;
    for (std::size_t k = 0; k < chains.size(); ++k) {
        const std::size_t from = joins[(k + joins.size() - 1) % joins.size()].secondFrom;
        appendSwept(chains[k], from, joins[k].firstKeeps, loop);
        loop.insert(loop.end(), joins[k].through.begin(), joins[k].through.end());
    }
    return loop;
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

// The raw loop itself as cubic pieces, for a loop the clean-up left as it was.
Path pathAlong(const std::vector<OffsetChain>& chains, const std::vector<CornerJoin>& joins) {
    const std::vector<Point>& before = joins.back().through;
    Path path;
    Point at = before.empty() ? chains[0].points.front() : before.back();
    const auto goOnTo = [&](const Point& p) {
        appendStraight(at, p, path);
        at = p;
    };
    for (std::size_t k = 0; k < chains.size(); ++k) {
        const std::size_t from = joins[(k + joins.size() - 1) % joins.size()].secondFrom;
        if (from < joins[k].firstKeeps) {
            goOnTo(chains[k].points[from]);
            appendFitted(chains[k], from, joins[k].firstKeeps - 1, path);
            at = chains[k].points[joins[k].firstKeeps - 1];
        }
        for (const Point& p : joins[k].through) goOnTo(p);
    }
    if (!path.isEmpty()) goOnTo(path.start());
    return path;
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
