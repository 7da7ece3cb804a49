#include "ui/words/problem_sentences/sentence_patterns.h"

namespace coutil {

QString ProblemSentence::ofGeometry(ProblemCode code) {
    switch (code) {
        case ProblemCode::offsetLostPart:
            return tr(
                "[Panel {panel}: ]the allowance swallows a corner of the sewing line[ "
                "({value:fine})]; give this edge a narrower allowance or make the panel "
                "wider there.");
        case ProblemCode::offsetTooNear:
            return tr(
                "[Panel {panel}: ]the cutting line comes nearer to the sewing line than "
                "asked[ ({value:fine} instead of {limit:fine})]; change the allowance of "
                "this edge or smooth the line there.");
        case ProblemCode::offsetTooFar:
            return tr(
                "[Panel {panel}: ]the cutting line lies farther from the sewing line than "
                "asked[ ({value:fine} instead of {limit:fine})]; change the allowance of "
                "this edge or smooth the line there.");
        case ProblemCode::outlineOpen:
            return tr(
                "[Panel {panel}: ]the outline has a gap; draw the lines there until they "
                "meet.");
        case ProblemCode::outlineCrossesItself:
            return tr(
                "[Panel {panel}: ]the outline crosses itself; take less in here, or give "
                "the panel more width.");
        default:
            return {};
    }
}

}  // namespace coutil
