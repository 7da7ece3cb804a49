#include "ui/words/problem_sentences/sentence_patterns.h"

namespace coutil {

QString ProblemSentence::ofUnits(ProblemCode code) {
    switch (code) {
        case ProblemCode::lengthUnreadable:
            return tr(
                "[{subject}: ]“{text}” is not a length; write it like 96, 37 3/4 in or "
                "32.5 cm.");
        case ProblemCode::lengthNegative:
            return tr(
                "[{subject}: ]{text} is less than nothing; write a length without a minus "
                "sign.");
        case ProblemCode::lengthOutOfRange:
            return tr(
                "[{subject}: ]“{text}” is far longer than anything that can be sewn; check "
                "the figure and its unit.");
        default:
            return {};
    }
}

}  // namespace coutil
