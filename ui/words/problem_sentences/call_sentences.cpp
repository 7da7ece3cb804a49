#include "ui/words/problem_sentences/sentence_patterns.h"

namespace coutil {

QString ProblemSentence::ofCalls(const Problem& problem) {
    switch (problem.code) {
        case ProblemCode::callUnknown:
            return tr(
                "There is no call “{path}”[ (perhaps “{text}”)]; coutil --help lists "
                "them.");
        case ProblemCode::callIncomplete:
            return tr("The call {path} needs {text}; coutil --help shows how.");
        case ProblemCode::optionUnknown:
            return tr(
                "There is no option “{path}”[ for {text}]; coutil --help lists the "
                "options.");
        case ProblemCode::optionBadValue:
            if (hasFigure(problem, "garments")) {
                return tr(
                    "Option {path} needs a new folio, but this one exists already (garments in it: "
                    "{garments}); leave the option out or choose a new file.");
            }
            return tr(
                "Option {path} cannot be “{text}”[: it must lie between {lowest} and "
                "{highest}]; coutil --help shows what it takes.");
        case ProblemCode::optionWithoutValue:
            return tr("Option {path} needs a value after it[: {text}].");
        case ProblemCode::optionTwice:
            return tr("Option {path} is there twice; leave one of them out.");
        case ProblemCode::optionsExclude:
            return tr("Options {path} and {text} exclude each other; leave one of them out.");
        case ProblemCode::operandUnexpected:
            return tr(
                "“{path}” is one word too many[ for {text}]; leave it out, or put quotes "
                "around a name with blanks.");
        case ProblemCode::displayMissing:
            return tr(
                "There is no display to open a window on; coutil --help lists the calls that "
                "need none.");
        default:
            return {};
    }
}

}  // namespace coutil
