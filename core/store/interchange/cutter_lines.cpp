#include "core/store/interchange/cutter_lines.h"

#include <algorithm>
#include <limits>

#include "core/geometry/offset_outline.h"
#include "core/store/interchange/corner_stretches.h"

namespace coutil::interchange {

namespace {

// Counter-clockwise, from its right side; a quarter as a cubic leaves the circle by 0.03 % of the
// radius (platform-independent, k = 0.5522847498307935).
Path circle(const Point& middle, double radiusMm) {
    constexpr double kArm = 0.5522847498307935;
    Path path;
    Vector from(radiusMm, 0);
    for (int quarter = 0; quarter < 4; ++quarter) {
        const Vector to(-from.y(), from.x());
        path.pieces.push_back(
            {middle + from, middle + from + kArm * to, middle + to + kArm * from, middle + to});
        from = to;
    }
    path.pieces.back().p3 = path.pieces.front().p0;
    return path;
}

Outcome<Path> outlineOf(const Piece& piece, double kerfMm) {
    if (kerfMm <= 0) return *piece.cutting;
    std::vector<OffsetEdge> edges;
    for (Path& stretch : cornerStretches(*piece.cutting)) {
        edges.push_back({std::move(stretch), kerfMm / 2});
    }
    auto offset = offsetOutline(edges, {});
    for (Problem& problem : offset.problems) problem.panel = piece.name;
    if (!offset) return Outcome<Path>::failed(std::move(offset.problems));
    return {std::move(offset->path), std::move(offset.problems)};
}

// Each next one begins nearest to where the last one ended.
template <class Item, class Start, class End>
void orderByNearest(std::vector<Item>& items, Point from, Start start, End end) {
    for (std::size_t next = 0; next < items.size(); ++next) {
        const auto rest = items.begin() + static_cast<std::ptrdiff_t>(next);
        const auto nearest = std::min_element(rest, items.end(), [&](const Item& a, const Item& b) {
            return (start(a) - from).norm() < (start(b) - from).norm();
        });
        std::iter_swap(rest, nearest);
        from = end(items[next]);
    }
}

void orderLines(std::vector<CutterLine>& lines, const Point& from) {
    orderByNearest(
        lines, from, [](const CutterLine& l) { return l.path.start(); },
        [](const CutterLine& l) { return l.path.end(); });
}

std::vector<CutterLine> holesOf(const Piece& piece, double kerfMm) {
    std::vector<CutterLine> holes;
    for (const PieceHole& hole : piece.holes) {
        const double radiusMm = (hole.diameterMm - kerfMm) / 2;
        if (radiusMm <= 0) continue;
        holes.push_back(
            {LineKind::eyelets, placed(circle(hole.at, radiusMm), piece.placement), true});
    }
    return holes;
}

// Drawn from inside out, through the middle of the outline's cut. A balance notch is a pair, as on
// paper.
std::vector<CutterLine> slitsOf(const Piece& piece, double kerfMm) {
    constexpr double kHalfPairMm = 1.5;
    std::vector<CutterLine> slits;
    for (const Notch& notch : piece.notches) {
        const double inMm = std::min(kSlitMm, notch.lengthMm / 2);
        if (inMm <= 0) continue;
        const Point rim = notch.at + notch.lengthMm * notch.outward;
        const Path slit =
            straightPath(rim - inMm * notch.outward, rim + kerfMm / 2 * notch.outward);
        const Vector along(-notch.outward.y(), notch.outward.x());
        const bool isPair = notch.kind == NotchKind::balance;
        for (const double side : isPair ? std::vector{1.0, -1.0} : std::vector{0.0}) {
            Placement aside;
            aside.shift = side * kHalfPairMm * along;
            slits.push_back(
                {LineKind::notches, placed(placed(slit, aside), piece.placement), false});
        }
    }
    return slits;
}

CutterPiece cutsOf(const Piece& piece, const Path& outline, double kerfMm) {
    CutterPiece cuts;
    cuts.name = piece.name;
    cuts.origin = placed(Point(Point::Zero()), piece.placement);
    const CutterLine last{LineKind::cutting, placed(outline, piece.placement), true};
    cuts.lines = holesOf(piece, kerfMm);
    orderLines(cuts.lines, last.path.start());
    std::vector<CutterLine> slits = slitsOf(piece, kerfMm);
    orderLines(slits, cuts.lines.empty() ? last.path.start() : cuts.lines.back().path.end());
    std::move(slits.begin(), slits.end(), std::back_inserter(cuts.lines));
    cuts.lines.push_back(last);
    return cuts;
}

}  // namespace

Outcome<std::vector<CutterPiece>> cutterLines(const std::vector<Piece>& pieces, double kerfMm) {
    std::vector<CutterPiece> cut;
    std::vector<Problem> problems;
    bool isWhole = true;
    Point lowest = Point::Constant(std::numeric_limits<double>::max());
    for (const Piece& piece : pieces) {
        Outcome<Path> outline = outlineOf(piece, kerfMm);
        std::move(outline.problems.begin(), outline.problems.end(), std::back_inserter(problems));
        isWhole = isWhole && outline;
        if (!isWhole) continue;
        lowest = lowest.cwiseMin(boundsOf(placed(*outline, piece.placement)).lowest);
        cut.push_back(cutsOf(piece, *outline, kerfMm));
    }
    if (!isWhole) return Outcome<std::vector<CutterPiece>>::failed(std::move(problems));
    orderByNearest(
        cut, lowest, [](const CutterPiece& p) { return p.lines.front().path.start(); },
        [](const CutterPiece& p) { return p.lines.back().path.end(); });
    return {std::move(cut), std::move(problems)};
}

}  // namespace coutil::interchange
