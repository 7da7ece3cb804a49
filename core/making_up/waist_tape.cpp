#include "core/making_up/waist_tape.h"

#include <map>
#include <utility>

#include "core/making_up/choice_range.h"
#include "core/making_up/opening_edges.h"
#include "core/pattern/panel_key.h"

namespace coutil {
namespace {

constexpr double kWaistHeightMm = 0;

// How far the tape has come on each side.
using Reached = std::map<PanelSide, double>;

TapePiece pieceOf(const WaistTapeChoices& choices, double finishedMm, int count) {
    return {choices.widthMm, finishedMm, finishedMm + 2 * choices.turningMm, count};
}

std::vector<TapePiece> piecesOf(const WaistTapeChoices& choices, const Reached& reachedMm,
                                bool isFrontOpen) {
    std::vector<TapePiece> pieces;
    double throughMm = 0;
    for (const auto& [side, mm] : reachedMm) {
        const int sides = side == PanelSide::both ? 2 : 1;
        throughMm += sides * mm;
        pieces.push_back(pieceOf(choices, mm, sides));
    }
    if (isFrontOpen || pieces.empty()) return pieces;
    return {pieceOf(choices, throughMm, 1)};
}

}  // namespace

Outcome<WaistTape> waistTapeFor(const Pattern& pattern, const WaistTapeChoices& choices) {
    std::vector<Problem> problems;
    requireWithin("waist_tape/width", choices.widthMm, 1, 200, problems);
    requireWithin("waist_tape/turning", choices.turningMm, 0, 200, problems);
    WaistTape tape;
    if (!choices.isWanted && problems.empty()) return tape;
    Reached reachedMm;
    for (const Panel& panel : pattern.panels) {
        const auto waist = crossingAtHeight(panel, kWaistHeightMm);
        if (!waist) {
            problems.push_back({.code = ProblemCode::tapeMissesPanel,
                                .subject = "waist",
                                .panel = panelKey(panel)});
            continue;
        }
        double& alongMm = reachedMm[panel.side];
        const double widthMm = waist->back.x() - waist->front.x();
        tape.catches.push_back({panelKey(panel), waist->front, (waist->front + waist->back) / 2,
                                waist->back, alongMm, alongMm + widthMm});
        alongMm += widthMm;
    }
    if (!problems.empty()) return Outcome<WaistTape>::failed(std::move(problems));
    tape.pieces = piecesOf(choices, reachedMm, frontOpening(pattern).has_value());
    for (const TapePiece& piece : tape.pieces) tape.finishedMm += piece.count * piece.finishedMm;
    return tape;
}

}  // namespace coutil
