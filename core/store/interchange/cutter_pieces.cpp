#include "core/store/interchange/cutter_pieces.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/tolerances.h"

namespace coutil::interchange {

namespace {

// The straight line of a fold, as what mirrors over it.
class FoldMirror {
  public:
    explicit FoldMirror(const Path& fold)
        : at_(fold.start()), along_((fold.end() - fold.start()).normalized()) {}

    [[nodiscard]] Vector turned(const Vector& v) const { return 2 * v.dot(along_) * along_ - v; }
    [[nodiscard]] Point operator()(const Point& p) const { return at_ + turned(p - at_); }
    [[nodiscard]] Path operator()(const Path& path) const {
        Path result = path;
        for (Cubic& c : result.pieces) {
            c = {(*this)(c.p0), (*this)(c.p1), (*this)(c.p2), (*this)(c.p3)};
        }
        return result;
    }
    [[nodiscard]] bool isOn(const Point& p) const {
        const Vector v = p - at_;
        return std::abs(v.x() * along_.y() - v.y() * along_.x()) < 2 * tolerance::kInkGridMm;
    }
    [[nodiscard]] bool isOn(const Cubic& c) const {
        return isOn(c.p0) && isOn(c.p1) && isOn(c.p2) && isOn(c.p3);
    }

  private:
    Point at_;
    Vector along_;
};

// Pieces that are one single point on paper are no edges to offset; their neighbours meet there.
Path withoutSpecks(const Path& closed) {
    Path kept;
    for (Cubic piece : closed.pieces) {
        if ((piece.p3 - piece.p0).norm() < tolerance::kSamePointMm) continue;
        if (!kept.isEmpty()) piece.p0 = kept.end();
        kept.pieces.push_back(piece);
    }
    if (!kept.isEmpty()) kept.pieces.back().p3 = kept.start();
    return kept;
}

// The cutting line without its stretch on the fold, from the one end of that to the other.
Path withoutFold(const Path& cutting, const FoldMirror& mirror) {
    const std::size_t count = cutting.pieces.size();
    const auto isOn = [&](std::size_t i) { return mirror.isOn(cutting.pieces[i % count]); };
    std::size_t first = 0;
    while (first < count && !(isOn(first + count - 1) && !isOn(first))) ++first;
    Path open;
    if (first == count) return open;
    for (std::size_t i = first; !isOn(i) && open.pieces.size() < count; ++i) {
        open.pieces.push_back(cutting.pieces[i % count]);
    }
    return open;
}

void unfold(Piece& piece) {
    if (!piece.foldLine || !piece.cutting) return;
    const FoldMirror mirror(*piece.foldLine);
    Path half = withoutFold(*piece.cutting, mirror);
    if (half.isEmpty()) return;
    // Both ends lie on the fold to a hair; the mirrored half begins where this one ends.
    Path other = reversed(mirror(half));
    other.pieces.front().p0 = half.end();
    other.pieces.back().p3 = half.start();
    piece.cutting = joined(half, other);
    const std::size_t notches = piece.notches.size();
    for (std::size_t i = 0; i < notches; ++i) {
        Notch twin = piece.notches[i];
        if (mirror.isOn(twin.at)) continue;
        twin.at = mirror(twin.at);
        twin.outward = mirror.turned(twin.outward);
        piece.notches.push_back(std::move(twin));
    }
    const std::size_t holes = piece.holes.size();
    for (std::size_t i = 0; i < holes; ++i) {
        if (mirror.isOn(piece.holes[i].at)) continue;
        piece.holes.push_back(piece.holes[i]);
        piece.holes.back().at = mirror(piece.holes[i].at);
    }
    piece.foldLine.reset();
}

}  // namespace

std::vector<Piece> cutterPieces(const std::vector<Tracing>& tracings, bool mirroredToo) {
    std::vector<Piece> pieces;
    for (Piece& piece : piecesOf(tracings)) {
        if (!piece.cutting || piece.cutting->isEmpty()) continue;
        piece.cutting = withoutSpecks(*piece.cutting);
        unfold(piece);
        pieces.push_back(piece);
        if (!mirroredToo || !piece.isMirroredPair || piece.cutCount < 2) continue;
        piece.name += " mirrored";
        piece.placement.isMirrored = !piece.placement.isMirrored;
        pieces.push_back(std::move(piece));
    }
    layInRow(pieces);
    return pieces;
}

}  // namespace coutil::interchange
