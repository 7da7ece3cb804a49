#include "core/making_up/cloth_estimate.h"

#include <algorithm>
#include <utility>

#include "core/block/edge_allowance.h"
#include "core/making_up/choice_range.h"

namespace coutil {
namespace {

constexpr double kWidestClothMm = 10'000;

struct Piece {
    double widthMm = 0;
    double heightMm = 0;
    double areaMm2 = 0;
    int count = 1;
};

// The allowance reaches to the side its edge lies on: top and bottom in height, others in width.
Piece pieceOf(const Panel& panel, const AllowanceStyle& allowance) {
    const Box box = boundsOf(outlineOf(panel));
    Piece piece{box.widthMm(), box.heightMm(), signedAreaMm2(outlineOf(panel)), 1};
    double aboveMm = 0;
    double belowMm = 0;
    double frontMm = 0;
    double backMm = 0;
    for (const Edge& edge : panel.edges) {
        const double widthMm = allowanceMm(allowance, panel, edge);
        piece.areaMm2 += lengthMm(edge.path) * widthMm;
        const Vector along = edge.path.end() - edge.path.start();
        double& reachMm = edge.role == EdgeRole::top      ? aboveMm
                          : edge.role == EdgeRole::bottom ? belowMm
                          : along.y() > 0                 ? backMm
                                                          : frontMm;
        reachMm = std::max(reachMm, widthMm);
    }
    piece.widthMm += frontMm + backMm;
    piece.heightMm += aboveMm + belowMm;
    if (isCutOnFold(panel)) {
        piece.widthMm *= 2;
        piece.areaMm2 *= 2;
    } else if (panel.side == PanelSide::both) {
        piece.count = 2;
    }
    return piece;
}

double rowsLengthMm(std::vector<Piece> pieces, double clothWidthMm) {
    std::ranges::stable_sort(pieces, std::ranges::greater{}, &Piece::heightMm);
    std::vector<double> usedMm;  // of each row
    double lengthMm = 0;
    for (const Piece& piece : pieces) {
        for (int k = 0; k < piece.count; ++k) {
            const auto row = std::ranges::find_if(
                usedMm, [&](double mm) { return mm + piece.widthMm <= clothWidthMm; });
            if (row != usedMm.end()) {
                *row += piece.widthMm;
                continue;
            }
            usedMm.push_back(piece.widthMm);
            lengthMm += piece.heightMm;
        }
    }
    return lengthMm;
}

}  // namespace

Outcome<ClothEstimate> clothEstimate(const Pattern& pattern, const LayerCut& cut,
                                     double clothWidthMm) {
    ClothEstimate estimate{.clothWidthMm = clothWidthMm};
    std::vector<Piece> pieces;
    double widestMm = 1;
    for (const std::size_t panel : cut.panels) {
        const Piece piece = pieceOf(pattern.panels[panel], cut.allowance);
        estimate.pieces += piece.count;
        estimate.areaMm2 += piece.count * piece.areaMm2;
        widestMm = std::max(widestMm, piece.widthMm);
        pieces.push_back(piece);
    }
    std::vector<Problem> problems;
    requireWithin("materials/cloth_width", clothWidthMm, widestMm, kWidestClothMm, problems);
    if (!problems.empty()) return Outcome<ClothEstimate>::failed(std::move(problems));
    estimate.lengthMm = rowsLengthMm(std::move(pieces), clothWidthMm);
    return estimate;
}

}  // namespace coutil
