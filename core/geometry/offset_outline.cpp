#include "core/geometry/offset_outline.h"

#include <algorithm>
#include <cmath>

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

bool isFinite(const OffsetEdge& edge) {
    return std::isfinite(edge.widthMm) && edge.widthMm >= 0 &&
           std::all_of(edge.path.pieces.begin(), edge.path.pieces.end(), [](const Cubic& c) {
               return c.p0.allFinite() && c.p1.allFinite() && c.p2.allFinite() && c.p3.allFinite();
           });
}

double doubleAreaMm2(const std::vector<OffsetChain>& chains) {
    double sum = 0;
    for (const OffsetChain& chain : chains) {
        for (std::size_t k = 1; k < chain.feet.size(); ++k) {
            const Point& a = chain.feet[k - 1];
            const Point& b = chain.feet[k];
            sum += a.x() * b.y() - a.y() * b.x();
        }
    }
    return sum;
}

// Closed, counter-clockwise, of finite numbers, and every edge has a length.
bool isOutline(const std::vector<OffsetEdge>& edges, const std::vector<OffsetChain>& chains) {
    if (chains.empty() || doubleAreaMm2(chains) <= tolerance::kSliverMm2) return false;
    for (std::size_t k = 0; k < chains.size(); ++k) {
        const OffsetChain& next = chains[(k + 1) % chains.size()];
        const Vector gap = next.feet.front() - chains[k].feet.back();
        if (gap.norm() > tolerance::kSamePointMm) return false;
    }
    std::size_t seen = 0;
    for (std::size_t k = 0; k < chains.size(); ++k) {
        seen += k == 0 || chains[k].edge != chains[k - 1].edge;
    }
    return seen == edges.size();
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
    // Corners whose cuts meet on a short chain between them.
    std::vector<bool> isCutAway(n);
    for (std::size_t k = 0; k < n; ++k) {
        isCutAway[k] = joins[(k + n - 1) % n].secondFrom >= joins[k].firstKeeps;
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
    Path path;
    const auto goOnTo = [&](const Point& p) {
        if (path.isEmpty() || path.end() == p) return;
        path.pieces.push_back(straightCubic(path.end(), p));
    };
    for (std::size_t k = 0; k < chains.size(); ++k) {
        const std::size_t from = joins[(k + joins.size() - 1) % joins.size()].secondFrom;
        goOnTo(chains[k].points[from]);
        appendFitted(chains[k], from, joins[k].firstKeeps - 1, path);
        for (const Point& p : joins[k].through) goOnTo(p);
    }
    goOnTo(path.start());
    return path;
}

Problem notAnOutline(const std::vector<OffsetEdge>& edges) {
    Problem problem{ProblemCode::outlineCrossesItself, Severity::error, {}, {}, {}, {}, {}};
    if (!edges.empty() && !edges.front().path.isEmpty()) problem.at = edges.front().path.start();
    return problem;
}

Problem lostPart(const LeftOutPart& part) {
    Problem problem{ProblemCode::offsetLostPart, Severity::warning, {}, {}, {}, part.at, {}};
    problem.figures = {{"value", part.sizeMm, FigureUnit::millimetre}};
    return problem;
}

}  // namespace

Outcome<OffsetOutline> offsetOutline(const std::vector<OffsetEdge>& edges,
                                     const std::vector<CornerTreatment>& corners) {
    if (!std::all_of(edges.begin(), edges.end(), isFinite)) return notAnOutline(edges);
    const std::vector<OffsetChain> chains = offsetChains(edges);
    if (!isOutline(edges, chains)) return notAnOutline(edges);
    const std::vector<CornerJoin> joins = joinsOf(chains, corners);
    const CleanedLoop cleaned = positiveRegion(rawLoopOf(chains, joins));
    if (cleaned.outer.empty()) return notAnOutline(edges);

    OffsetOutline outline;
    for (const InkPoint& p : cleaned.outer) outline.points.push_back(inMillimetres(p));
    std::vector<OffsetCorner> allCorners;
    for (std::size_t k = 0; k < joins.size(); ++k) {
        allCorners.push_back({chains[k].feet.back(), joins[k].treatment, joins[k].reachMm});
        const bool isBetweenEdges = k + 1 == chains.size() || chains[k + 1].edge != chains[k].edge;
        if (isBetweenEdges) outline.corners.push_back(allCorners.back());
    }
    std::vector<Problem> problems = checkOffset(chains, allCorners, outline.points);
    for (const LeftOutPart& part : cleaned.leftOut) problems.push_back(lostPart(part));
    if (std::any_of(problems.begin(), problems.end(), isError)) {
        if (!isSimple(sewingRingOf(chains))) return notAnOutline(edges);
        return Outcome<OffsetOutline>::failed(std::move(problems));
    }
    outline.path = cleaned.wasClean ? pathAlong(chains, joins) : pathThrough(outline.points);
    return {std::move(outline), std::move(problems)};
}

}  // namespace coutil
