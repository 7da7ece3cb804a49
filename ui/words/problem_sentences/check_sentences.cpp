#include "ui/words/problem_sentences/sentence_patterns.h"

namespace coutil {

QString ProblemSentence::ofChecks(ProblemCode code) {
    switch (code) {
        case ProblemCode::seamTooCurved:
            return tr(
                "Seam {subject}[ in panel {panel}] is too curved for a channel in its own "
                "allowance[: "
                "{value} off the straight in 100 mm, {limit} is the most]; plan a tape there.");
        case ProblemCode::kinkInCurve:
            return tr(
                "[Panel {panel}: ]{subject} has a kink[ of {value}, more than {limit}]; smooth the "
                "line there, or let it stand with a reason.");
        case ProblemCode::sidesDiffer:
            return tr(
                "Left and right differ[ by {value}] at {subject}[ of panel {panel}]; check that "
                "this "
                "is meant, or make both sides equal.");
        case ProblemCode::girthOffTarget:
            return tr(
                "{subject} measures {value}[, the style asks for {target}][ ({difference} off)]; "
                "check that the fitting asked for it.");
        case ProblemCode::foldBecomesSeam:
            return tr(
                "Left and right differ, so the centre front is cut as two panels with a seam in "
                "place of the fold; make both sides equal to have the fold again.");
        default:
            return {};
    }
}

}  // namespace coutil
