#include "core/geometry/offset_chain.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/cross_product.h"
#include "core/geometry/tolerances.h"

namespace coutil {

namespace {

constexpr int kDeepestHalving = 12;

Vector rightOf(const Vector& direction) { return {direction.y(), -direction.x()}; }

struct Sample {
    double t = 0;
    Point foot;
    Point point;
};

Sample sampleAt(const Cubic& piece, double widthMm, double t) {
    const Point foot = pointAt(piece, t);
    if (widthMm == 0) return {t, foot, foot};
    return {t, foot, foot + widthMm * rightOf(tangentAt(piece, t))};
}

double squaredDistanceToChord(const Point& p, const Point& a, const Point& b) {
    const Vector chord = b - a;
    const double length2 = chord.squaredNorm();
    if (length2 == 0) return (p - a).squaredNorm();
    const double along = std::clamp((p - a).dot(chord) / length2, 0.0, 1.0);
    return (p - a - along * chord).squaredNorm();
}

void appendSample(const Sample& s, OffsetChain& chain) {
    chain.places.push_back({chain.pieces.size() - 1, s.t});
    chain.feet.push_back(s.foot);
    chain.points.push_back(s.point);
}

// Halves until the middle of the offset lies on its chord; appends everything after `a`.
void appendBetween(const Cubic& piece, const Sample& a, const Sample& b, int depth,
                   OffsetChain& chain) {
    const Sample middle = sampleAt(piece, chain.widthMm, (a.t + b.t) / 2);
    constexpr double kWithin2 = tolerance::kOffsetChordMm * tolerance::kOffsetChordMm;
    if (depth < kDeepestHalving &&
        squaredDistanceToChord(middle.point, a.point, b.point) > kWithin2) {
        appendBetween(piece, a, middle, depth + 1, chain);
        appendBetween(piece, middle, b, depth + 1, chain);
        return;
    }
    appendSample(b, chain);
}

// Parts of even parameter width whose chords keep to the piece: a part of width h leaves its chord
// by at most h^2 / 8 times the largest second derivative, which for a cubic is at an end.
int evenParts(const Cubic& piece) {
    const double bend2 = std::max((piece.p0 - 2 * piece.p1 + piece.p2).squaredNorm(),
                                  (piece.p1 - 2 * piece.p2 + piece.p3).squaredNorm());
    const double parts = std::sqrt(0.75 * std::sqrt(bend2) / tolerance::kOffsetChordMm);
    return std::max(1, static_cast<int>(std::ceil(std::min(parts, 10000.0))));
}

void appendPiece(const Cubic& piece, OffsetChain& chain) {
    chain.pieces.push_back(piece);
    const int parts = evenParts(piece);
    Sample before = sampleAt(piece, chain.widthMm, 0);
    if (chain.feet.empty()) appendSample(before, chain);
    for (int k = 1; k <= parts; ++k) {
        const Sample next = sampleAt(piece, chain.widthMm, k == parts ? 1 : double(k) / parts);
        if (chain.widthMm == 0) {
            appendSample(next, chain);
        } else {
            appendBetween(piece, before, next, 0, chain);
        }
        before = next;
    }
}

bool isPoint(const Cubic& piece) {
    return (piece.p1 - piece.p0).norm() + (piece.p2 - piece.p1).norm() +
               (piece.p3 - piece.p2).norm() <
           tolerance::kSamePointMm;
}

bool turnsAt(const Vector& before, const Vector& after) {
    return before.dot(after) < 0 || std::abs(crossProduct(before, after)) > tolerance::kSmoothTurn;
}

}  // namespace

std::vector<OffsetChain> offsetChains(const std::vector<OffsetEdge>& edges) {
    std::vector<OffsetChain> chains;
    for (std::size_t e = 0; e < edges.size(); ++e) {
        bool isFirst = true;
        for (const Cubic& piece : edges[e].path.pieces) {
            if (isPoint(piece)) continue;
            const Vector start = tangentAt(piece, 0);
            if (isFirst || turnsAt(chains.back().endDirection, start)) {
                chains.push_back({e, edges[e].widthMm, {}, {}, {}, {}, start, start});
                isFirst = false;
            }
            appendPiece(piece, chains.back());
            chains.back().endDirection = tangentAt(piece, 1);
        }
    }
    return chains;
}

bool runsBackwards(const OffsetChain& chain, std::size_t k) {
    return (chain.points[k + 1] - chain.points[k]).dot(chain.feet[k + 1] - chain.feet[k]) < 0;
}

void appendSwept(const OffsetChain& chain, std::size_t first, std::size_t last,
                 std::vector<Point>& rawLoop) {
    for (std::size_t k = first; k < last; ++k) {
        if (k > first && runsBackwards(chain, k - 1)) {
            const Point& a = chain.feet[k - 1];
            const Point& b = chain.feet[k];
            const Vector out = chain.widthMm * rightOf((b - a).normalized());
            rawLoop.insert(rawLoop.end(), {a, a + out, b + out, b});
        }
        rawLoop.push_back(chain.points[k]);
    }
}

}  // namespace coutil
