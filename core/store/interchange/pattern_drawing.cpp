#include <algorithm>

#include "core/pattern/panel_key.h"
#include "core/store/interchange/piece.h"

namespace coutil::interchange {

namespace {

// Room between neighbours on a drawing, mm.
constexpr double kBetweenPiecesMm = 20;

std::optional<Path> foldLineOf(const std::vector<Edge>& edges) {
    const auto fold = std::ranges::find(edges, EdgeRole::fold, &Edge::role);
    if (fold == edges.end()) return std::nullopt;
    return fold->path;
}

Path joinedEdges(const std::vector<Edge>& edges) {
    Path outline;
    for (const Edge& edge : edges) {
        outline.pieces.insert(outline.pieces.end(), edge.path.pieces.begin(),
                              edge.path.pieces.end());
    }
    return outline;
}

// Where every panel has room for its name: beside the middle of the grain line.
Point besideGrain(const std::array<Point, 2>& grain) {
    constexpr double kBesideMm = 6;
    return (grain[0] + grain[1]) / 2 + Vector(kBesideMm, 0);
}

}  // namespace

std::vector<Piece> piecesOf(const Pattern& pattern) {
    const auto placements = masterPlacements(pattern, kBetweenPiecesMm);
    std::vector<Piece> pieces;
    for (std::size_t i = 0; i < pattern.panels.size(); ++i) {
        const Panel& panel = pattern.panels[i];
        Piece piece;
        piece.name = panelKey(panel);
        piece.sewing = panel.edges;
        for (const Edge& edge : panel.edges) {
            if (const auto at = pointAtSeamPosition(edge, 0)) piece.waistMarks.push_back(*at);
        }
        piece.grain = panel.grain;
        piece.levels = panel.levels;
        piece.foldLine = foldLineOf(panel.edges);
        piece.labelAt = besideGrain(panel.grain);
        piece.isMirroredPair = panel.side == PanelSide::both && !isCutOnFold(panel);
        piece.cutCount = piece.isMirroredPair ? 2 : 1;
        piece.placement = placements[i];
        pieces.push_back(std::move(piece));
    }
    return pieces;
}

std::vector<Piece> piecesOf(const std::vector<Tracing>& tracings) {
    std::vector<Piece> pieces;
    for (const Tracing& tracing : tracings) {
        Piece piece;
        piece.name = panelKey(tracing.panel, tracing.side);
        piece.sewing = tracing.sewing;
        piece.cutting = tracing.cutting;
        piece.notches = tracing.notches;
        piece.grain = tracing.grain;
        piece.levels = tracing.levels;
        if (tracing.isOnFold) piece.foldLine = foldLineOf(tracing.sewing);
        piece.labelAt = besideGrain(tracing.grain);
        piece.isMirroredPair = tracing.isMirroredPair;
        piece.cutCount = tracing.cutCount;
        pieces.push_back(std::move(piece));
    }
    layInRow(pieces);
    return pieces;
}

void layInRow(std::vector<Piece>& pieces) {
    double leftMm = 0;
    for (Piece& piece : pieces) {
        piece.placement.shift = Vector::Zero();
        const Box box = boundsOf(placed(outermostLine(piece), piece.placement));
        piece.placement.shift = Vector(leftMm - box.lowest.x(), 0);
        leftMm += box.widthMm() + kBetweenPiecesMm;
    }
}

Path sewingLine(const Piece& piece) { return joinedEdges(piece.sewing); }

Path outermostLine(const Piece& piece) {
    return piece.cutting && !piece.cutting->isEmpty() ? *piece.cutting : sewingLine(piece);
}

}  // namespace coutil::interchange
