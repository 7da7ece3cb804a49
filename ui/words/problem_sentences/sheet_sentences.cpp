#include "ui/words/problem_sentences/sentence_patterns.h"

namespace coutil {

// Scale factors have the last sentence.
QString ProblemSentence::ofSheetOption(const std::string& option) {
    if (option == "overlap") {
        return tr(
            "Neighbouring sheets cannot share {value}[: choose an overlap between {lowest} and "
            "{highest}, or a larger paper].");
    }
    if (option == "margin") {
        return tr("The margin cannot be {value}[: choose one between {lowest} and {highest}].");
    }
    if (option == "paper") {
        return tr(
            "A side of the paper is {value} long[: choose a paper with sides between {lowest} and "
            "{highest}].");
    }
    return tr(
        "A correction of {value} ({subject}) is more than a printer is off[: it must lie between "
        "{lowest} and {highest}]; measure the square again and print at 100 %.");
}

QString ProblemSentence::ofSheets(const Problem& problem) {
    switch (problem.code) {
        case ProblemCode::paperUnknown:
            return tr(
                "There is no paper called “{detail}”; choose A4, A3, A0, Letter, Legal, "
                "Tabloid or a roll, or write a size in mm like 200x300.");
        case ProblemCode::paperTooSmall:
            return tr(
                "The paper[ {detail}] leaves too little room inside its margins[: {value}, "
                "and at least {limit} is needed]; choose a larger paper or smaller margins.");
        case ProblemCode::sheetOptionOutOfRange:
            return ofSheetOption(problem.subject);
        case ProblemCode::tooManySheets:
            return tr(
                "This would take {value} sheets[ of {detail}], more than {limit}; choose a "
                "larger paper.");
        case ProblemCode::nothingChanged:
            return tr(
                "Nothing changed[ between {subject}][ and {detail}]: there is nothing to print.");
        default:
            return {};
    }
}

}  // namespace coutil
