#include "ui/words/problem_sentences/sentence_patterns.h"

namespace coutil {

QString ProblemSentence::ofDrawings(const Problem& problem) {
    switch (problem.code) {
        case ProblemCode::drawingUnreadable:
            return tr(
                "The drawing cannot be read[ at “{text}”][ from line {line} on]; save it again as "
                "plain SVG, or write it anew with coutil trace.");
        case ProblemCode::drawingForeign:
            return tr(
                "No panel of Coutil is in this drawing; give an SVG that coutil pattern or coutil "
                "trace wrote, with its groups as they were.");
        case ProblemCode::drawingTooLarge:
            return tr(
                "The drawing is larger or nested deeper than anything this program writes ({path} "
                "{value}, at most {highest}); check that it is the right file.");
        case ProblemCode::drawingPanelMissing:
            return tr(
                "Panel {panel} is not in the drawing; write the drawing anew before it is cut.");
        case ProblemCode::drawingPanelUnknown:
            return tr(
                "The drawing has a panel {panel} that this revision has not; check that both are "
                "of the same garment and revision.");
        case ProblemCode::drawingPanelOff:
            return tr(
                "Panel {panel} of the drawing lies up to {value:fine} off this revision, more than "
                "{limit:fine}; look there before it is cut.");
        case ProblemCode::drawingScaled:
            return tr(
                "Panel {panel} is drawn at {percent} of its size; open the drawing in millimetres, "
                "without fitting it to a page, and save it again.");
        default:
            return {};
    }
}

}  // namespace coutil
