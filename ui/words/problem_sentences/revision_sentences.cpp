#include "ui/words/problem_sentences/sentence_patterns.h"

namespace coutil {

QString ProblemSentence::ofChangedRules(const Problem& problem) {
    if (hasFigure(problem, "revision")) {
        return tr(
            "Revision {revision}: by today’s drafting rules “{subject}”[ at {detail}] does not fit "
            "any more; the revision stays and prints as it was confirmed.");
    }
    if (hasFigure(problem, "value")) {
        return tr(
            "[Revision {path}: ]today’s drafting rules would draw it up to {value:fine} "
            "differently[ in panel {panel}]; it stays and prints as it was confirmed.");
    }
    if (problem.panel.empty()) {
        return tr(
            "[Revision {path}: ]it cannot be drafted by today’s rules; it stays and prints as it "
            "was confirmed.");
    }
    return tr(
        "[Revision {path}: ]today’s drafting rules would not give it the same panels and edges[, "
        "panel {panel} among them]; it stays and prints as it was confirmed.");
}

QString ProblemSentence::ofRevisions(const Problem& problem) {
    switch (problem.code) {
        case ProblemCode::revisionTampered:
            return tr(
                "Revision {path}[ of {text}] is not what was confirmed: the file was changed from "
                "outside or is damaged; open a copy from before.");
        case ProblemCode::revisionParentMissing:
            return tr(
                "Revision {path}[ of {text}] began from a revision that is not in this file; open "
                "a copy from before.");
        case ProblemCode::confirmRefused:
            return tr(
                "The pencil has errors that stand[: {text}]; mend them, or say why it is to be "
                "confirmed all the same.");
        case ProblemCode::pencilMissing:
            return tr("[{subject} has ]no pencil; begin one from a revision first.");
        case ProblemCode::rulesChanged:
            return ofChangedRules(problem);
        case ProblemCode::fittingUnknown:
            return tr("There is no fitting “{path}”[; there is {text}].");
        case ProblemCode::photoUnreadable:
            return tr("{path} is not a picture that can be read; choose a JPEG or PNG file.");
        case ProblemCode::photoTooLarge:
            return tr("{path} is too large[ ({text})]; choose a smaller picture.");
        default:
            return {};
    }
}

}  // namespace coutil
