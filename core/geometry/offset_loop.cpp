#include "core/geometry/offset_loop.h"

namespace coutil {

namespace {

// Whether the cuts of the corners at both ends of a chain pass each other.
bool leavesNothing(const OffsetChain& chain, const CornerJoin& before, const CornerJoin& after) {
    if (before.secondFrom != after.firstKeeps) return before.secondFrom > after.firstKeeps;
    const std::size_t k = before.secondFrom;
    const Vector step = chain.points[k] - chain.points[k - 1];
    return step.dot(after.through.front() - before.through.back()) <= 0;
}

}  // namespace

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

}  // namespace coutil
