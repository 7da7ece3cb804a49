#include "ui/words/problem_sentences/sentence_patterns.h"

namespace coutil {

QString ProblemSentence::ofSheets(ProblemCode code) {
    switch (code) {
        case ProblemCode::paperUnknown:
            return tr(
                "There is no paper called “{detail}”; choose A4, A3, A0, Letter, Legal, "
                "Tabloid or a roll, or write a size in mm like 200x300.");
        case ProblemCode::paperTooSmall:
            return tr(
                "The paper[ {detail}] leaves too little room inside its margins[: {value}, "
                "and at least {limit} is needed]; choose a larger paper or smaller margins.");
        case ProblemCode::sheetOptionOutOfRange:
            return tr(
                "{subject} is {value}[, but must lie between {lowest} and {highest}]; change "
                "it.");
        case ProblemCode::tooManySheets:
            return tr(
                "This would take {value} sheets[ of {detail}], more than {limit}; choose a "
                "larger paper.");
        default:
            return {};
    }
}

}  // namespace coutil
