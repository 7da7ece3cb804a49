#include "core/sheets/change_sheet.h"

#include "core/sheets/draw_sheets.h"
#include "core/sheets/sheet_lettering.h"

namespace coutil {
namespace {

std::string panelName(const PanelChange& change, const SheetWords& words) {
    const std::string* side = nullptr;
    if (change.side == PanelSide::left) side = &words.leftSide;
    if (change.side == PanelSide::right) side = &words.rightSide;
    return side == nullptr ? change.name : change.name + " " + *side;
}

// The words of the first page: how to lay it on the master and what is not printed.
SheetWords firstPageWords(const std::vector<PanelChange>& changes, const ChangeWords& words) {
    std::vector<std::string> unchanged;
    std::vector<std::string> gone;
    for (const PanelChange& change : changes) {
        if (!change.isChanged()) unchanged.push_back(panelName(change, words.sheet));
        if (!change.inB) gone.push_back(panelName(change, words.sheet));
    }
    SheetWords all = words.sheet;
    all.estimates.clear();
    all.cautions = {words.howToLay};
    if (!unchanged.empty())
        all.cautions.push_back(filled(words.unchanged, joinedBy(unchanged, ", ")));
    if (!gone.empty()) all.cautions.push_back(filled(words.gone, joinedBy(gone, ", ")));
    return all;
}

PieceDrawing laidOut(const ChangePiece& piece, const Placement& placement) {
    PieceDrawing drawing{piece.strokes, piece.letterings};
    for (auto& stroke : drawing.strokes) stroke.path = placed(stroke.path, placement);
    for (auto& lettering : drawing.letterings) {
        lettering.at = placed(lettering.at, placement);
        lettering.turnRad += placement.turnRad;
    }
    return drawing;
}

}  // namespace

Outcome<ChangeSheet> changeSheet(const Pattern& a, const Pattern& b, const ChangeInks& inks,
                                 const SheetOptions& options, const ChangeWords& words) {
    const auto changes = changedLines(a, b);
    ChangeSheet sheet;
    sheet.pieces = changePieces(a, b, changes, inks, words);
    if (sheet.pieces.empty()) {
        Problem problem;
        problem.code = ProblemCode::nothingChanged;
        problem.subject = words.oldState;
        problem.detail = words.newState;
        return problem;
    }
    SheetOptions once = options;
    once.mirroredToo = false;
    std::vector<Tracing> places;
    for (const ChangePiece& piece : sheet.pieces) places.push_back(piece.place);
    auto plan = planSheets(places, once);
    if (!plan) return Outcome<ChangeSheet>::failed(std::move(plan.problems));
    sheet.plan = *std::move(plan);
    sheet.pages = drawSheets(
        sheet.plan, places, firstPageWords(changes, words), [&](const PlacedTracing& placedPiece) {
            return laidOut(sheet.pieces[placedPiece.tracing], placedPiece.placement);
        });
    return sheet;
}

}  // namespace coutil
