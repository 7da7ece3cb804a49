#include "ui/words/problem_sentences/sentence_patterns.h"

namespace coutil {

QString ProblemSentence::ofAlterations(ProblemCode code) {
    switch (code) {
        case ProblemCode::alterationUnfit:
            return tr(
                "“{subject}” does not fit this pattern and was left out[: there is no {detail}]; "
                "name a place that is there, or switch it off.");
        case ProblemCode::alterationTooLarge:
            return tr(
                "“{subject}”[ at {detail}] asks for too much and was left out[: {value} where "
                "{limit} is the most]; use a smaller amount, or share it out.");
        case ProblemCode::alterationBadValue:
            return tr("“{subject}”: {detail} cannot be used; type a sound figure there.");
        case ProblemCode::alterationBreaksPanel:
            return tr(
                "With “{subject}”[ at {detail}] the pattern does not hold[ in panel {panel}], so "
                "it was left out; use a smaller amount, or share it out.");
        case ProblemCode::joinLeavesGap:
            return tr(
                "Along the seam {detail} that was given up, the two edges lay up to {value} "
                "apart, and the joined panel is as much wider there; take it in at the seams "
                "beside it.");
        case ProblemCode::markUnfit:
            return tr(
                "The mark “{subject}” lies outside the pattern[: there is no {detail}]; give it a "
                "place on the revision that was tried.");
        default:
            return {};
    }
}

}  // namespace coutil
